import type { AgainMark, AfterTheFirstPassResult } from '#calculators/afterTheFirstPass.ts';
import { wayOut } from '#lib/mapping/again/shortOfOutline.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import { fixed } from '#words/number.ts';
import { browOutlinePath } from './browOutlinePath.ts';

type Props = Readonly<{
  id: string;
  side: Side;
  marks: readonly AgainMark[];
  result: AfterTheFirstPassResult;
}>;

/** Room beside the front, and beyond the tail for its label, mm. */
const [nearMm, beyondMm] = [5, 15] as const;

/**
 * The approved outline in long blue dashes, where the pigment sits, and at each mark whether to add, to stop
 * or to read again. The paper is drawn here and not by Paper.tsx: a lesson with its figure may load only so
 * many files.
 */
export function PigmentInOutline({ id, side, marks, result: { approved, pigment, again } }: Props) {
  const out = side === 'left' ? 1 : -1;
  const heights = [approved, pigment].flatMap((brow) => marks.map((mark) => brow[mark].vMm));
  const width = Math.max(approved.tail.uMm, pigment.tail.uMm) + beyondMm - nearMm;
  const height = Math.max(0.72 * width, Math.max(...heights) - Math.min(...heights) + 22);
  const left = side === 'left' ? nearMm : -nearMm - width;
  const top = -(Math.max(...heights) + Math.min(...heights)) / 2 - height / 2;
  return (
    <svg
      class="plot again-plot"
      viewBox={`${left} ${top} ${width} ${height}`}
      role="img"
      aria-labelledby={`${id}-t`}
    >
      <title
        id={`${id}-t`}
      >{`The client’s ${side} brow from the front: the approved outline and where the pigment sits. The steps stand in the table.`}</title>
      <defs>
        <pattern id={`${id}-mm`} width="1" height="1" patternUnits="userSpaceOnUse">
          <path class="paper-mm" d="M1 0H0V1" />
        </pattern>
        <pattern id={`${id}-cm`} width="10" height="10" patternUnits="userSpaceOnUse">
          <rect width="10" height="10" fill={`url(#${id}-mm)`} />
          <path class="paper-cm" d="M10 0H0V10" />
        </pattern>
      </defs>
      <rect x={left} y={top} width={width} height={height} fill={`url(#${id}-cm)`} />
      <path class="pigment" d={browOutlinePath(pigment, side)} />
      <path class="d-plan" d={browOutlinePath(approved, side)} />
      {again.ok &&
        marks.map((mark) => {
          const { short, step } = again.marks[mark];
          const x = out * pigment[mark].uMm;
          const y = -pigment[mark].vMm;
          const way = wayOut(mark);
          const label =
            step.do === 'add-here'
              ? `+ ${fixed(step.addMm)}`
              : step.do === 'read-again'
                ? 'read again'
                : step.because === 'over'
                  ? `stop, ${fixed(-short.value)} over`
                  : 'stop';
          const labelX = way === 'outward' ? x + out * 3.5 : x;
          const labelY =
            way === 'up'
              ? Math.min(y, -approved[mark].vMm) - 2.6
              : way === 'down'
                ? Math.max(y, -approved[mark].vMm) + 5
                : y + 1.2;
          return (
            <g key={mark}>
              {step.do === 'add-here' ? (
                <path class="add" d={`M${x - 1.6},${y}h3.2M${x},${y - 1.6}v3.2`} />
              ) : (
                <path class="stop" d={`M${x - 1.2},${y - 1.2}h2.4v2.4h-2.4z`} />
              )}
              <text
                class={step.do === 'add-here' ? 'halo b' : 'halo'}
                x={labelX}
                y={labelY}
                text-anchor={way === 'outward' ? (out > 0 ? 'start' : 'end') : 'middle'}
              >
                {label}
              </text>
            </g>
          );
        })}
      <text class="halo" x={left + 2} y={top + height - 2}>
        {side === 'left' ? 'midline this way' : 'temple this way'}
      </text>
      <text class="halo" x={left + width - 2} y={top + height - 2} text-anchor="end">
        {side === 'left' ? 'temple this way' : 'midline this way'}
      </text>
    </svg>
  );
}
