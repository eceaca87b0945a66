import { whichMarkNotToTrust } from '#skills/mapping/whichMarkNotToTrust.ts';
import { fixed } from '#words/number.ts';
import {
  listedMarks,
  listedMarkWords,
  type ListedMark,
  type WhichMarkGiven,
} from '#words/skills/whichMarkNotToTrust.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const fromMm = 51;
const upToMm = 78;
const scale = 2.7;
const left = 60;
const row = 8;
const across = (mm: number) => left + (mm - fromMm) * scale;
const isBlamed = (name: ListedMark, suspect: number | string | undefined) =>
  name === suspect || (suspect === 'nose' && name.startsWith('nose-'));

/**
 * One row for each mark, a tick where it stands on the ruler. After marking: the middle one, the limit, and
 * what is out.
 */
function MarkPlot({ given: { placesMm, limitMm }, at, yours, right }: PictureProps<WhichMarkGiven>) {
  const isMarked = right !== undefined;
  const middle = Object.values(placesMm).sort((a, b) => a - b)[3] ?? 0;
  const foot = listedMarks.length * row + 4;
  return (
    <svg class="plot pic-wide" viewBox={`0 -7 135 ${foot + 16}`} role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {isMarked
          ? `Places of the seven marks; the middle one at ${fixed(middle)} mm, the limit ${limitMm} mm to each side`
          : 'Places of the seven marks on the ruler; the numbers are in the table'}
      </title>
      <MmPaper at={at} x={0} y={-7} width={135} height={foot + 16} scale={scale} zeroX={across(60)} />
      {isMarked && (
        <>
          <path class="d-thread" d={`M${across(middle)} -3V${foot}`} />
          <path
            class="d-ref"
            d={`M${across(middle - limitMm)} -3V${foot}M${across(middle + limitMm)} -3V${foot}`}
          />
        </>
      )}
      {listedMarks.map((name, i) => {
        const y = i * row + 4;
        const x = across(placesMm[name]);
        return (
          <g>
            <text class={isMarked && isBlamed(name, yours) ? 's b halo' : 's halo'} x="3" y={y + 1.3}>
              {listedMarkWords[name]}
            </text>
            <path class="d-mark" d={`M${x} ${y - 2.6}v5.2`} />
            {isMarked && isBlamed(name, right) && <circle class="ring" cx={x} cy={y} r="3.2" />}
          </g>
        );
      })}
      <path class="d-mark" d={`M${left} ${foot}H${across(upToMm)}`} />
      {Array.from({ length: upToMm - fromMm + 1 }, (_, i) => (
        <path class="d-mark" d={`M${across(fromMm + i)} ${foot}v${(fromMm + i) % 5 === 0 ? 3 : 1.6}`} />
      ))}
      {[55, 60, 65, 70, 75].map((mm) => (
        <text class="s" x={across(mm)} y={foot + 7.5} text-anchor="middle">
          {mm}
        </text>
      ))}
    </svg>
  );
}

export default function WhichMarkNotToTrust(settings: ProblemSettings) {
  return <Problem skill={whichMarkNotToTrust} Picture={MarkPlot} {...settings} />;
}
