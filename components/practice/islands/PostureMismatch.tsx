import { BrowOverEye } from '#components/pictures/BrowShape.tsx';
import { postureMismatch } from '#skills/mapping/postureMismatch.ts';
import { fixed, signed } from '#words/number.ts';
import { mismatch, type PostureMismatchGiven } from '#words/skills/postureMismatch.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

/**
 * The same brow on two days over one level line. After marking: the change where it may be read, struck out
 * where not.
 */
function TwoDays({ given, at, right }: PictureProps<PostureMismatchGiven>) {
  const { side, then, now, thenMm, nowMm } = given;
  const middle = side === 'right' ? 36 : -36;
  const part = mismatch(given);
  return (
    <svg class="plot pic-wide" viewBox="-74 -36 148 46" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`The ${side} brow twice over the level of the pupils: arch at ${fixed(thenMm)} mm then, ${fixed(nowMm)} mm today`}</title>
      <MmPaper at={at} x={-74} y={-36} width={148} height={46} />
      <path class="d-ref" d="M-70 0H70" />
      {[
        { taken: then, mm: thenMm, x: -37, day: 'then' },
        { taken: now, mm: nowMm, x: 37, day: 'today' },
      ].map(({ taken, mm, x, day }) => (
        <g key={day}>
          <g transform={`translate(${x + middle} 0)`}>
            <BrowOverEye side={side} archMm={mm} isClosed={taken.pose === 'eyes-closed'} />
          </g>
          <text class="s b halo" x={x} y="-30" text-anchor="middle">
            {day} {fixed(mm)}
          </text>
        </g>
      ))}
      {right !== undefined && (
        <path
          class={part ? 'dim' : 'range'}
          d={part ? 'M-6 -17L6 -7M-6 -7L6 -17' : `M0 ${-thenMm}V${-nowMm}`}
        />
      )}
      {right !== undefined && (
        <text class="s halo" x="0" y="6.5" text-anchor="middle">
          {part ? 'not compared' : `${signed(nowMm - thenMm)} mm`}
        </text>
      )}
    </svg>
  );
}

export default function PostureMismatch(settings: ProblemSettings) {
  return <Problem skill={postureMismatch} Picture={TwoDays} {...settings} />;
}
