import { changeNothing } from '#skills/mapping/changeNothing.ts';
import { fixed } from '#words/number.ts';
import { comparedThings, type ChangeNothingGiven } from '#words/skills/changeNothing.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const scale = 10;
const across = (mm: number) => 88 + mm * scale;
const row = 9;
const names = {
  'front-height': 'front, height',
  'arch-height': 'arch, height',
  'tail-height': 'tail, height',
  'front-place': 'front, place',
} as const;

/**
 * Differences with their ranges over a line at 0. After marking, ranges that leave 0 out are drawn strong.
 */
function RangeRows({ given: { compared }, at, right }: PictureProps<ChangeNothingGiven>) {
  const foot = comparedThings.length * row + 3;
  return (
    <svg class="plot pic-wide" viewBox={`0 -6 135 ${foot + 15}`} role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        The four differences of her brows as they are in the skin, with their ranges on one line; the numbers
        are in the table
      </title>
      <MmPaper at={at} x={0} y={-6} width={135} height={foot + 15} scale={scale} zeroX={across(0)} />
      <path class="d-mark" d={`M${across(0)} -3V${foot}`} />
      {comparedThings.map((thing, i) => {
        const y = i * row + 4;
        const { differenceMm, loMm, hiMm } = compared[thing];
        const isStrong = right !== undefined && (loMm > 0 || hiMm < 0);
        return (
          <g>
            <text class={isStrong ? 's b halo' : 's halo'} x="3" y={y + 1.3}>
              {names[thing]}
            </text>
            <path
              class={isStrong ? 'range' : 'dim'}
              d={`M${across(loMm)} ${y}H${across(hiMm)}M${across(loMm)} ${y - 1.2}v2.4M${across(hiMm)} ${y - 1.2}v2.4`}
            />
            <circle class="dot" cx={across(differenceMm)} cy={y} r="1.3" />
          </g>
        );
      })}
      <path class="d-mark" d={`M${across(-4.3)} ${foot}H${across(4.3)}`} />
      {[-4, -3, -2, -1, 0, 1, 2, 3, 4].map((mm) => (
        <>
          <path class="d-mark" d={`M${across(mm)} ${foot}v2`} />
          {mm % 2 === 0 && (
            <text class="s" x={across(mm)} y={foot + 7} text-anchor="middle">
              {fixed(mm, 0)}
            </text>
          )}
        </>
      ))}
    </svg>
  );
}

export default function ChangeNothing(settings: ProblemSettings) {
  return <Problem skill={changeNothing} Picture={RangeRows} {...settings} />;
}
