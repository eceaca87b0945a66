import type { PointMm } from '#lib/geometry/point.ts';
import type { ComponentChildren } from 'preact';
import { useGrip } from './useGrip.ts';
import type { Hold } from './useSteps.ts';

export type View = Readonly<{ x: number; y: number; width: number; height: number }>;

type Props = Readonly<{
  view: View;
  label: string;
  /** Marks that can be moved, in reading order. */
  marks: readonly Readonly<{ key: string; point: PointMm }>[];
  active: string;
  /** What a screen reader hears at the active mark: its name and both numbers. */
  activeLabel: string;
  hold: Hold;
  onPick: (key: string) => void;
  /** The pointer moves a mark to a place. */
  onMove: (key: string, to: PointMm) => void;
  /** An arrow key moves it by so much, picture millimetres. */
  onStep: (key: string, by: PointMm) => void;
  /** The drawing, in picture millimetres with y down. */
  children: ComponentChildren;
}>;

const stepMm = 0.1;
const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/**
 * The picture whose marks can be moved: drag one, or tap it and then tap its new place, or use the arrow
 * keys.
 * The nearest mark within a finger's reach answers, so marks may stand closer together than two fingertips.
 */
export function MarkStage({ view, label, activeLabel, onStep, children, ...grip }: Props) {
  const { marks, active } = grip;
  const { svg, on } = useGrip(grip);
  const key = (event: KeyboardEvent) => {
    const arrow = arrows[event.key];
    if (!arrow) return;
    event.preventDefault();
    const by = stepMm * (event.shiftKey ? 10 : 1);
    onStep(active, { xMm: arrow[0] * by, yMm: arrow[1] * by });
  };

  const at = marks.find((mark) => mark.key === active)?.point;
  return (
    <svg
      ref={svg}
      class="plot map stage"
      viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`}
      role="group"
      aria-label={label}
      {...on}
    >
      {children}
      {marks.map((mark) => (
        <circle
          key={mark.key}
          class="grip"
          data-mark={mark.key}
          cx={mark.point.xMm}
          cy={-mark.point.yMm}
          r="4"
        />
      ))}
      {at && (
        <g class="handle" tabindex={0} role="button" aria-label={activeLabel} onKeyDown={key}>
          <circle cx={at.xMm} cy={-at.yMm} r="2.7" />
          <path d={`M${at.xMm - 5},${-at.yMm}h2.3m5.4,0h2.3M${at.xMm},${-at.yMm - 5}v2.3m0,5.4v2.3`} />
        </g>
      )}
    </svg>
  );
}
