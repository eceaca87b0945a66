import { frontByThreeAnchors } from '#skills/mapping/frontByThreeAnchors.ts';
import { fixed } from '#words/number.ts';
import {
  rulerAnchorWords,
  rulerRows,
  type FrontByThreeAnchorsGiven,
} from '#words/skills/frontByThreeAnchors.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const left = 5;
const right = 119;
const top = -48;

/**
 * Part of a level ruler with the midline, the nose tip and three pairs. After marking: both fronts, equally
 * far.
 */
function AnchorRuler({
  given: { midlineMm, tipMm, placesMm, anchor },
  at,
  yours,
  right: answer,
}: PictureProps<FrontByThreeAnchorsGiven>) {
  const isMarked = typeof answer === 'number';
  const isApart =
    isMarked && typeof yours === 'number' && Math.abs(yours - answer) > 0.15 && yours > 0 && yours < 30;
  return (
    <svg
      class="plot pic-wide"
      viewBox={`${left} ${top} ${right - left} ${14 - top}`}
      role="img"
      aria-labelledby={`${at}-t`}
    >
      <title id={`${at}-t`}>
        {isMarked
          ? `Both fronts ${fixed(answer)} mm from the midline`
          : 'Ruler with the midline, the nose tip and three pairs of marks; the readings are in the table'}
      </title>
      <MmPaper at={at} x={left} y={top} width={right - left} height={14 - top} />
      <path class="d-thread" d={`M${midlineMm} ${top + 7}V2`} />
      <text class="s halo" x={midlineMm} y={top + 5} text-anchor="middle">
        midline
      </text>
      {rulerRows.map((name, i) => {
        const y = top + 16 + i * 10;
        const pair = placesMm[name];
        return (
          <g>
            <path class="d-ref" d={`M${pair.right} ${y}H${pair.left}`} />
            <rect class="d-r" x={pair.right - 1.3} y={y - 1.3} width="2.6" height="2.6" />
            <circle class="d-l" cx={pair.left} cy={y} r="1.45" />
            <text
              class={name === anchor ? 's b halo' : 's halo'}
              x={midlineMm}
              y={y - 2.2}
              text-anchor="middle"
            >
              {rulerAnchorWords[name]}
            </text>
          </g>
        );
      })}
      <path class="d-mark" d={`M${tipMm} -3.4l1.6 1.6l-1.6 1.6l-1.6 -1.6z`} />
      <text
        class="s halo"
        x={tipMm + (tipMm > midlineMm ? 3 : -3)}
        y="-0.8"
        text-anchor={tipMm > midlineMm ? 'start' : 'end'}
      >
        nose tip
      </text>
      <path class="d-mark" d={`M${left} 2H${right}`} />
      {Array.from({ length: right - left + 1 }, (_, i) => left + i).map((mm) =>
        mm % 5 === 0 ? <path class="d-mark" d={`M${mm} 2v${mm % 10 === 0 ? 4 : 2.5}`} /> : null,
      )}
      {[20, 40, 60, 80, 100].map((mm) => (
        <text class="s" x={mm} y="11" text-anchor="middle">
          {mm}
        </text>
      ))}
      {isMarked &&
        [-1, 1].map((way) => (
          <>
            <path class="d-plan" d={`M${midlineMm + way * answer} ${top + 9}V2`} />
            <text class="s b halo" x={midlineMm + way * answer} y={top + 7} text-anchor="middle">
              {fixed(answer)}
            </text>
            {isApart && <path class="dim" d={`M${midlineMm + way * yours} -12V2`} />}
          </>
        ))}
      {isApart && (
        <text class="s halo" x={midlineMm + yours} y="-13" text-anchor="middle">
          yours {fixed(yours)}
        </text>
      )}
    </svg>
  );
}

export default function FrontByThreeAnchors(settings: ProblemSettings) {
  return <Problem skill={frontByThreeAnchors} Picture={AnchorRuler} {...settings} />;
}
