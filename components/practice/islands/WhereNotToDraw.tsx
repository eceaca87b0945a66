import { whereNotToDraw } from '#skills/mapping/whereNotToDraw.ts';
import { fixed } from '#words/number.ts';
import {
  partEnds,
  partOnNothing,
  outlineParts,
  type OutlinePart,
  type WhereNotGiven,
} from '#words/skills/whereNotToDraw.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const scale = 2.3;
const left = 26;
const across = (mm: number) => left + mm * scale;
const isPart = (code: unknown): code is Exclude<OutlinePart, 'none'> =>
  outlineParts.some((part) => part === code) && code !== 'none';

/**
 * The outline over a ruler, a row for hair and one for bone. After marking: the part with neither, and the
 * one you chose.
 */
function OutlineRows({ given, at, yours, right }: PictureProps<WhereNotGiven>) {
  const { outlineMm, hairFromMm, hairToMm, thinFromMm, leavesBoneMm } = given;
  const end = across(outlineMm);
  const bar = (fromMm: number, toMm: number, y: number) =>
    toMm > fromMm ? `M${across(fromMm)} ${y}H${across(toMm)}` : '';
  const nothing = partOnNothing(given);
  const isMarked = right !== undefined;
  const bracket = (part: Exclude<OutlinePart, 'none'>, y: number) => {
    const [fromMm, toMm] = partEnds(given, part);
    return `M${across(fromMm)} ${y + 3}V${y}H${across(toMm)}v3`;
  };
  return (
    <svg class="plot pic-wide" viewBox="0 -42 135 58" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {isMarked
          ? nothing === 'none'
            ? 'Every part of the outline has hair or bone under it'
            : `Neither hair nor bone from ${partEnds(given, nothing)
                .map((mm) => fixed(mm))
                .join(' to ')} mm`
          : 'An outline over a ruler, with a row for hair and a row for bone; the readings are in the table'}
      </title>
      <MmPaper at={at} x={0} y={-42} width={135} height={58} scale={scale} zeroX={across(0)} />
      <path
        class="d-plan"
        d={`M${across(0)} -19L${across(1)} -28Q${across(outlineMm * 0.62)} -37 ${end} -21Q${across(outlineMm * 0.62)} -28 ${across(0)} -19Z`}
      />
      <text class="s halo" x="3" y="-11.8">
        hair
      </text>
      <path class="dim" d={bar(0, outlineMm, -13)} />
      <path class="range" d={bar(hairFromMm, thinFromMm, -13)} />
      <path class="range" stroke-dasharray="1.2 1.4" d={bar(thinFromMm, hairToMm, -13)} />
      <text class="s halo" x="3" y="-4.8">
        bone
      </text>
      <path class="dim" d={bar(0, outlineMm, -6)} />
      <path class="range" d={bar(0, leavesBoneMm, -6)} />
      <path
        class="d-mark"
        d={`M${across(0)} 1H${end}${Array.from(
          { length: 10 },
          (_, i) => `M${across(i * 5)} 1v${i % 2 === 0 ? 3 : 1.8}`,
        )
          .filter((_, i) => i * 5 <= outlineMm)
          .join('')}`}
      />
      {[0, 10, 20, 30, 40]
        .filter((mm) => mm <= outlineMm)
        .map((mm) => (
          <text class="s" x={across(mm)} y="10" text-anchor="middle">
            {mm}
          </text>
        ))}
      {isMarked && nothing !== 'none' && <path class="d-mark" d={bracket(nothing, -38)} />}
      {isMarked && nothing !== 'none' && (
        <text class="s b halo" x={across(partEnds(given, nothing)[0]) - 2} y="-36" text-anchor="end">
          neither
        </text>
      )}
      {isPart(yours) && yours !== right && <path class="d-plan" d={bracket(yours, 11.5)} />}
    </svg>
  );
}

export default function WhereNotToDraw(settings: ProblemSettings) {
  return <Problem skill={whereNotToDraw} Picture={OutlineRows} {...settings} />;
}
