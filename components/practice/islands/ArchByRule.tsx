import { archByRule } from '#skills/mapping/archByRule.ts';
import { settledLine, type ArchByRuleGiven } from '#words/skills/archByRule.ts';
import { fixed } from '#words/number.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const rightMm = 72;
const scale = 1.8;
const across = (mm: number) => mm * scale;

/**
 * One side from the midline outwards: front, tail and eye, settled. After marking: where the rule puts the
 * arch, and yours.
 */
function ArchRuler({ given, at, yours, right }: PictureProps<ArchByRuleGiven>) {
  const { brows, eyes, asked } = given;
  const middle = (a: number, b: number) => across((a + b) / 2);
  const front = middle(brows.right.frontMm, brows.left.frontMm);
  const tail = middle(brows.right.tailMm, brows.left.tailMm);
  const inner = middle(eyes.right.innerMm, eyes.left.innerMm);
  const outer = middle(eyes.right.outerMm, eyes.left.outerMm);
  const isMarked = typeof right === 'number';
  const isApart =
    isMarked && typeof yours === 'number' && Math.abs(yours - right) > 0.15 && yours > 0 && yours < rightMm;
  const { startMm, endMm } = settledLine(given);
  const lineY = asked === 'women' ? -10 : -31;
  return (
    <svg
      class="plot pic-wide"
      viewBox={`-5 -54 ${across(rightMm) + 8} 70`}
      role="img"
      aria-labelledby={`${at}-t`}
    >
      <title id={`${at}-t`}>
        {isMarked
          ? `The arch at ${fixed(right)} mm from the midline${isApart ? `, your answer at ${fixed(yours)} mm` : ''}`
          : 'One brow and one eye over a ruler from the midline; the readings are in the table'}
      </title>
      <MmPaper at={at} x={-5} y={-54} width={across(rightMm) + 8} height={70} scale={scale} />
      <path class="d-thread" d="M0 -50V2" />
      <text class="s halo" x="2" y="-48">
        midline
      </text>
      <path class="d-mark" d={`M${front} -30V-20M${tail} -28V-22M${front} -25H${tail}`} />
      <text class="s halo" x={front} y="-15.5" text-anchor="middle">
        front
      </text>
      <text class="s halo" x={tail} y="-15.5" text-anchor="middle">
        tail
      </text>
      <path
        class="dim"
        d={`M${inner} -7Q${(inner + outer) / 2} -15 ${outer} -8Q${(inner + outer) / 2} -1 ${inner} -7Z`}
      />
      <text class="s halo" x={inner - 1.5} y="-5.5" text-anchor="end">
        eye
      </text>
      <path class="d-mark" d={`M0 2H${across(rightMm)}`} />
      {Array.from({ length: rightMm + 1 }, (_, mm) =>
        mm % 5 === 0 ? <path class="d-mark" d={`M${across(mm)} 2v${mm % 10 === 0 ? 4 : 2.5}`} /> : null,
      )}
      {[0, 10, 20, 30, 40, 50, 60, 70].map((mm) => (
        <text class="s" x={across(mm)} y="12" text-anchor="middle">
          {mm}
        </text>
      ))}
      {isMarked && (
        <>
          <path class="range" d={`M${across(startMm)} ${lineY}H${across(right)}`} />
          <path class="d-ref" d={`M${across(right)} ${lineY}H${across(endMm)}`} />
          <path class="d-mark" d={`M${across(right)} -44V2`} />
          <text
            class="s b halo"
            x={across(right)}
            y="-46"
            text-anchor={isApart && yours > right ? 'end' : 'start'}
          >
            arch {fixed(right)}
          </text>
          {isApart && <path class="d-plan" d={`M${across(yours)} -38V2`} />}
          {isApart && (
            <text class="s halo" x={across(yours)} y="-39.5" text-anchor={yours > right ? 'start' : 'end'}>
              yours {fixed(yours)}
            </text>
          )}
        </>
      )}
    </svg>
  );
}

export default function ArchByRule(settings: ProblemSettings) {
  return <Problem skill={archByRule} Picture={ArchRuler} {...settings} />;
}
