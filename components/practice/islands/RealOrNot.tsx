import { realOrNot } from '#skills/mapping/realOrNot.ts';
import { fixed } from '#words/number.ts';
import { neededIn, type RealOrNotGiven } from '#words/skills/realOrNot.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const scale = 12.5;
const across = (mm: number) => (mm + 2.6) * scale + 3;
const width = 135;

/**
 * The difference on a line from 0. After marking: what the readings allow round it, by the right way and by
 * yours.
 */
function DifferenceBar({
  given: { differenceMm, mostSeeMm },
  at,
  yours,
  right,
}: PictureProps<RealOrNotGiven>) {
  const needed = neededIn(right);
  const yourNeeded = neededIn(yours);
  const isApart = needed !== undefined && yourNeeded !== undefined && yourNeeded !== needed;
  const bar = (half: number, y: number) =>
    `M${Math.max(2, across(differenceMm - half))} ${y}H${Math.min(width - 2, across(differenceMm + half))}`;
  return (
    <svg class="plot pic-wide" viewBox={`0 -22 ${width} 44`} role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {needed === undefined
          ? `A difference of ${fixed(differenceMm)} mm on a line from 0; most people see from ${mostSeeMm} mm`
          : `A difference of ${fixed(differenceMm)} mm, give or take ${fixed(needed, 2)} mm`}
      </title>
      <MmPaper at={at} x={0} y={-22} width={width} height={44} scale={scale} zeroX={across(0)} />
      <path class="d-mark" d={`M3 8H${width - 2}M${across(0)} -18V10`} />
      <path class="d-ref" d={`M${across(mostSeeMm)} -18V8`} />
      <text class="s halo" x={across(mostSeeMm) + 1.5} y="-16">
        most see
      </text>
      <text class="s halo" x={across(0) - 1.5} y="-16" text-anchor="end">
        no difference
      </text>
      {[-2, -1, 0, 1, 2, 3, 4, 5, 6, 7].map((mm) => (
        <>
          <path class="d-mark" d={`M${across(mm)} 8v2.4`} />
          <text class="s" x={across(mm)} y="16" text-anchor="middle">
            {fixed(mm, 0)}
          </text>
        </>
      ))}
      {needed !== undefined && <path class="range" d={bar(needed, -4)} />}
      {isApart && <path class="d-plan" d={bar(yourNeeded, 3)} />}
      {isApart && (
        <text class="s halo" x={across(differenceMm)} y="2" text-anchor="middle">
          yours ± {fixed(yourNeeded, 2)}
        </text>
      )}
      <circle class="dot" cx={across(differenceMm)} cy="-4" r="1.7" />
      <text class="s b halo" x={across(differenceMm)} y="-7.5" text-anchor="middle">
        {fixed(differenceMm)}
        {needed === undefined ? ' mm' : ` ± ${fixed(needed, 2)}`}
      </text>
    </svg>
  );
}

export default function RealOrNot(settings: ProblemSettings) {
  return <Problem skill={realOrNot} Picture={DifferenceBar} {...settings} />;
}
