import { ownTechnicalError } from '#skills/mapping/ownTechnicalError.ts';
import { fixed } from '#words/number.ts';
import type { OwnTechnicalErrorGiven } from '#words/skills/ownTechnicalError.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const scale = 8;
const middle = 67.5;
const rowMm = 8;
const held = (mm: number) => Math.max(-7.8, Math.min(7.8, mm));

/**
 * Each pair on a row: from its first reading (the line at 0) to its second. After marking, the error as a
 * bar, and yours.
 */
function PairRows({ given: { pairs }, at, yours, right }: PictureProps<OwnTechnicalErrorGiven>) {
  const isMarked = typeof right === 'number';
  const isApart = isMarked && typeof yours === 'number' && Math.abs(yours - right) > 0.15;
  const across = (mm: number) => middle + held(mm) * scale;
  const foot = pairs.length * rowMm + (isMarked ? 16 : 4);
  const bar = (mm: number, y: number) =>
    `M${across(-mm)} ${y}H${across(mm)}M${across(-mm)} ${y - 1.4}v2.8M${across(mm)} ${y - 1.4}v2.8`;
  return (
    <svg class="plot pic-wide" viewBox={`0 -11 135 ${foot + 19}`} role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {isMarked
          ? `The second readings around the first, with an error of ${fixed(right)} mm either way`
          : 'The second reading of each pair, left or right of its first; the numbers are in the table'}
      </title>
      <MmPaper at={at} x={0} y={-11} width={135} height={foot + 19} scale={scale} zeroX={middle} />
      <path class="d-mark" d={`M${middle} -4V${foot}`} />
      <text class="s halo" x={middle} y="-5.6" text-anchor="middle">
        first reading
      </text>
      {pairs.map(({ firstMm, secondMm }, i) => {
        const y = i * rowMm + 4;
        return (
          <g>
            <text class="s halo" x="3" y={y + 1.3}>
              {i + 1}
            </text>
            <path class="dim" d={`M${middle} ${y}H${across(secondMm - firstMm)}`} />
            <circle class="dot" cx={across(secondMm - firstMm)} cy={y} r="1.4" />
          </g>
        );
      })}
      {isMarked && <path class="range" d={bar(right, foot - 9)} />}
      {isMarked && (
        <text class="s b halo" x={across(right) + 2} y={foot - 7.7}>
          ± {fixed(right)}
        </text>
      )}
      {isApart && <path class="d-plan" d={bar(Math.abs(yours), foot - 3)} />}
      {isApart && (
        <text class="s halo" x="3" y={foot - 1.7}>
          yours ± {fixed(yours)}
        </text>
      )}
      <path class="d-mark" d={`M${across(-7)} ${foot}H${across(7)}`} />
      {[-6, -4, -2, 0, 2, 4, 6].map((mm) => (
        <>
          <path class="d-mark" d={`M${across(mm)} ${foot}v1.6`} />
          <text class="s" x={across(mm)} y={foot + 6} text-anchor="middle">
            {fixed(mm, 0)}
          </text>
        </>
      ))}
    </svg>
  );
}

export default function OwnTechnicalError(settings: ProblemSettings) {
  return <Problem skill={ownTechnicalError} Picture={PairRows} {...settings} />;
}
