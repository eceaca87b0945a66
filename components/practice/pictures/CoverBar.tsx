import { fixed } from '#words/number.ts';

type Props = Readonly<{
  y: number;
  yours?: number | string | undefined;
  right?: number | string | undefined;
}>;

const whole = 100;
const held = (percent: number) => Math.max(0, Math.min(100, percent));

/** All of the skin as a bar from 0 to 100. After marking: what is covered, and your answer under it. */
export function CoverBar({ y, yours, right }: Props) {
  const isApart = typeof right === 'number' && typeof yours === 'number' && Math.abs(yours - right) > 0.5;
  return (
    <g transform={`translate(12 ${y})`}>
      <rect class="cover-all" width={whole} height="5" />
      {typeof right === 'number' && <rect class="cover-part" width={held(right)} height="5" />}
      {typeof right === 'number' && (
        <text class="s b halo" x={held(right) + 1.5} y="-1.4" text-anchor={right > 80 ? 'end' : 'start'}>
          {fixed(right)} %
        </text>
      )}
      {[0, 50, 100].map((tick) => (
        <text class="s" x={tick} y="16" text-anchor="middle">
          {tick}
        </text>
      ))}
      <path class="d-mark" d="M0 5v3M50 5v3M100 5v3" />
      {isApart && <path class="d-plan" d={`M0 9H${held(yours)}`} />}
      {isApart && (
        <text class="s halo" x={Math.min(72, held(yours) + 1.5)} y="11.5">
          yours {fixed(yours)} %
        </text>
      )}
    </g>
  );
}
