import { midlineFromPairs } from '#skills/mapping/midlineFromPairs.ts';
import type { MidlineFromPairsGiven } from '#words/skills/midlineFromPairs.ts';
import { rulerPairWords } from '#words/skills/midlineFromPairs.ts';
import { fixed } from '#words/number.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const rows = ['browFront', 'innerCorner', 'pupil', 'outerCorner', 'noseWing'] as const;
const rulerMm = 125;
const rowMm = 10;
const top = -rows.length * rowMm - 10;

/** A ruler across the face, seen from the front: the client's right is on the left. One row for each pair. */
function MidlineRuler({ given: { pairs }, at, yours, right }: PictureProps<MidlineFromPairsGiven>) {
  const isMarked = typeof right === 'number';
  const isApart = isMarked && typeof yours === 'number' && Math.abs(yours - right) > 0.15;
  const height = 16 - top;
  return (
    <svg
      class="plot pic-wide"
      viewBox={`-5 ${top} ${rulerMm + 10} ${height}`}
      role="img"
      aria-labelledby={`${at}-t`}
    >
      <title id={`${at}-t`}>
        {isMarked
          ? `Ruler with the midline at ${fixed(right)} mm${isApart ? ` and your answer at ${fixed(yours)} mm` : ''}`
          : 'Ruler with the five pairs of marks; the readings are in the table'}
      </title>
      <MmPaper at={at} x={-5} y={top} width={rulerMm + 10} height={height} />
      {isMarked && <path class="d-thread" d={`M${right} ${top + 7}V2`} />}
      {isApart && yours > -5 && yours < rulerMm + 5 && <path class="d-plan" d={`M${yours} ${top + 7}V2`} />}
      {rows.map((name, i) => {
        const { rightMm, leftMm } = pairs[name];
        const y = top + (i + 1) * rowMm + 6;
        return (
          <g>
            <path class="d-ref" d={`M${rightMm} ${y}H${leftMm}`} />
            <rect class="d-r" x={rightMm - 1.3} y={y - 1.3} width="2.6" height="2.6" />
            <circle class="d-l" cx={leftMm} cy={y} r="1.45" />
            <text class="s halo" x={(rightMm + leftMm) / 2} y={y - 2.2} text-anchor="middle">
              {rulerPairWords[name]}
            </text>
          </g>
        );
      })}
      <path class="d-mark" d={`M0 2H${rulerMm}`} />
      {Array.from({ length: rulerMm + 1 }, (_, mm) =>
        mm % 5 === 0 ? <path class="d-mark" d={`M${mm} 2v${mm % 10 === 0 ? 4 : 2.5}`} /> : null,
      )}
      {Array.from({ length: 7 }, (_, i) => (
        <text class="s" x={i * 20} y="12" text-anchor="middle">
          {i * 20}
        </text>
      ))}
      {isMarked && (
        <text
          class="s b halo"
          x={right + (isApart && yours > right ? -2 : 2)}
          y={top + 5}
          text-anchor={isApart && yours > right ? 'end' : 'start'}
        >
          midline {fixed(right)}
        </text>
      )}
      {isApart && yours > -5 && yours < rulerMm + 5 && (
        <text
          class="s halo"
          x={yours + (yours > right ? 2 : -2)}
          y={top + 5}
          text-anchor={yours > right ? 'start' : 'end'}
        >
          yours {fixed(yours)}
        </text>
      )}
    </svg>
  );
}

export default function MidlineFromPairs(settings: ProblemSettings) {
  return <Problem skill={midlineFromPairs} Picture={MidlineRuler} {...settings} />;
}
