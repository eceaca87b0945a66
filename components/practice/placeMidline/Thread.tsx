import { pinHeightsMm } from './placeView.ts';

type Across = Readonly<{ top: number; foot: number }>;
type Props = Readonly<{
  across: Across;
  as?: 'thread' | 'yours';
  label?: string;
  labelOn?: 'left' | 'right';
}>;

/**
 * A thread between its two pins: open above, full below. `yours` is drawn as a plan beside the true one: long
 * dashes, no pins.
 */
export function Thread({ across: { top, foot }, as = 'thread', label, labelOn = 'right' }: Props) {
  const [yTop, yFoot] = [-pinHeightsMm.top, -pinHeightsMm.foot];
  // The learner's own end carries the ring of the chosen pin.
  const clearMm = (as === 'thread' ? 3 : 6) * (labelOn === 'right' ? 1 : -1);
  return (
    <g>
      <path
        class={as === 'thread' ? 'd-thread' : 'd-plan'}
        d={`M${top.toFixed(2)},${yTop}L${foot.toFixed(2)},${yFoot}`}
      />
      {as === 'thread' && <circle class="d-pin" cx={top} cy={yTop} r="1.3" />}
      {as === 'thread' && <circle class="d-pin full" cx={foot} cy={yFoot} r="1.3" />}
      {label && (
        <text
          class={as === 'thread' ? 'thread-label halo' : 'halo'}
          x={top + clearMm}
          y={yTop + 1.2}
          text-anchor={labelOn === 'right' ? 'start' : 'end'}
        >
          {label}
        </text>
      )}
    </g>
  );
}
