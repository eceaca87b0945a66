import { simplestRecipe } from '#skills/colour/simplestRecipe.ts';
import { fixed } from '#words/number.ts';
import { dropsOf, limitOf, type SimplestRecipeGiven } from '#words/skills/simplestRecipe.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const x = (apart: number) => 26 + 24 * Math.min(4, apart);

/**
 * Drops against difference on the grey card: a row of drops, and a ring where the recipe stands. After
 * marking, the line of what counts as near.
 */
function DropsAgainstDifference({ given, at, right }: PictureProps<SimplestRecipeGiven>) {
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 76" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`Four recipes, by drops, along a ruler of differences; their numbers are in the table${right === undefined ? '' : `. What counts as near ends at ${fixed(limitOf(given), 2)}`}`}</title>
      <rect class="card" width="135" height="76" />
      <path
        class="card-line"
        d={`M${x(0)} 62H${x(4)}${[0, 1, 2, 3, 4].map((tick) => `M${x(tick)} 60v4`).join('')}`}
      />
      {[0, 1, 2, 3, 4].map((tick) => (
        <text key={tick} class="card-s" x={x(tick)} y="70" text-anchor="middle">
          {tick}
        </text>
      ))}
      {given.rows.map((row, i) => (
        <g key={dropsOf(row)}>
          <text class="card-s" x="22" y={14 + 13 * i} text-anchor="end">
            {dropsOf(row) === 1 ? '1 drop' : `${dropsOf(row)} drops`}
          </text>
          <path class="card-line thin" d={`M${x(0)} ${12.5 + 13 * i}H${x(row.apart)}`} />
          <circle class="grid-ring" cx={x(row.apart)} cy={12.5 + 13 * i} r="2.2" />
        </g>
      ))}
      {right !== undefined && <path class="card-line dash" d={`M${x(limitOf(given))} 4V62`} />}
      {right !== undefined && (
        <text
          class="card-s over"
          x={x(limitOf(given)) + 1.5}
          y="6"
        >{`near, up to ${fixed(limitOf(given), 2)}`}</text>
      )}
    </svg>
  );
}

export default function SimplestRecipe(settings: ProblemSettings) {
  return <Problem skill={simplestRecipe} Picture={DropsAgainstDifference} {...settings} />;
}
