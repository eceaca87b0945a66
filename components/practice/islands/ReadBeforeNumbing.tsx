import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { readBeforeNumbing } from '#skills/colour/readBeforeNumbing.ts';
import { spoiledAnswers, type ReadBeforeGiven } from '#words/skills/readBeforeNumbing.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

/** The three readings as swatches on the grey card. After marking, the one to leave out is struck through. */
function ThreeSwatches({ given: { readings }, at, right }: PictureProps<ReadBeforeGiven>) {
  const names = ['first', 'second', 'third'] as const;
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 48" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {right !== undefined && right !== 'none'
          ? `Three swatches; the ${right} is struck through`
          : 'Three swatches on a grey card; their numbers are in the table'}
      </title>
      <rect class="card" width="135" height="48" />
      {readings.map(({ l, a, b }, i) => (
        <g key={i}>
          <rect x={6 + 42 * i} y="6" width="39" height="30" fill={srgbToHex(labToSrgb({ l, a, b }))} />
          <text class="card-s" x={6 + 42 * i} y="43">
            {names[i]}
          </text>
          {right !== undefined && right === spoiledAnswers[i] && (
            <path class="grid-frame under thin" d={`M${6 + 42 * i} 36L${45 + 42 * i} 6`} />
          )}
          {right !== undefined && right === spoiledAnswers[i] && (
            <path class="card-line" d={`M${6 + 42 * i} 36L${45 + 42 * i} 6`} />
          )}
        </g>
      ))}
    </svg>
  );
}

export default function ReadBeforeNumbing(settings: ProblemSettings) {
  return <Problem skill={readBeforeNumbing} Picture={ThreeSwatches} {...settings} />;
}
