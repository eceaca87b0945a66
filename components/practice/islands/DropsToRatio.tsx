import { dropsToRatio } from '#skills/colour/dropsToRatio.ts';
import { fixed } from '#words/number.ts';
import type { DropsToRatioGiven } from '#words/skills/dropsToRatio.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const step = 11;

/**
 * The drops of both bottles in two rows on the grey card, to be counted. After marking: all of them in one
 * line, the second bottle's filled.
 */
function DropRows({
  given: { first, second, firstDrops, secondDrops },
  at,
  right,
}: PictureProps<DropsToRatioGiven>) {
  const row = (count: number, y: number, isFilled: boolean, from = 0) =>
    Array.from({ length: count }, (_, i) => (
      <circle
        key={i}
        class={isFilled ? 'card-dot' : 'grid-ring'}
        cx={10 + (from + i) * (y > 50 ? 8 : step)}
        cy={y}
        r={y > 50 ? 2.6 : 3.6}
      />
    ));
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 72" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`${firstDrops} drops of ${first} above, ${secondDrops} of ${second} below${right === undefined ? '' : `; in one line ${firstDrops + secondDrops} drops`}`}</title>
      <rect class="card" width="135" height="72" />
      <text class="card-s" x="6" y="8">
        {first}
      </text>
      {row(firstDrops, 15, false)}
      <text class="card-s" x="6" y="30">
        {second}
      </text>
      {row(secondDrops, 37, true)}
      {right !== undefined && (
        <text
          class="card-s"
          x="6"
          y="52"
        >{`the whole mix${typeof right === 'number' ? `: ${fixed(right)}` : ''}`}</text>
      )}
      {right !== undefined && row(firstDrops, 59, false)}
      {right !== undefined && row(secondDrops, 59, true, firstDrops)}
    </svg>
  );
}

export default function DropsToRatio(settings: ProblemSettings) {
  return <Problem skill={dropsToRatio} Picture={DropRows} {...settings} />;
}
