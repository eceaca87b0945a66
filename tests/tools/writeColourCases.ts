import { writeFileSync } from 'node:fs';
import { simplestCasesOfModel } from '#tests/tools/simplestCases.ts';
import { coverCasesOfModel, trapCasesOfModel } from '#tests/tools/colourCases.ts';

/**
 * Writes the tables of three skills anew: `node tests/tools/writeColourCases.ts`. Run it when the colour
 * model has changed.
 */
const file = (name: string) => new URL(`../../src/skills/colour/${name}.ts`, import.meta.url);
const rowText = (row: object) =>
  `  { ${Object.entries(row)
    .map(
      ([key, value]) =>
        `${key}: ${typeof value === 'string' ? `'${value}'` : JSON.stringify(value).replaceAll(',', ', ')}`,
    )
    .join(', ')} },`;

writeFileSync(
  file('coverCases'),
  `type Three = readonly [number, number, number];

/**
 * Old work in one skin and the brown she wants, L*a*b*. Colour differences from that brown: of the old work
 * now, of the nearest recipe at six weeks and at two years, and of the nearest with any share of white at its
 * worse date.
 */
export type CoverCase = Readonly<{ old: string; skin: Three; today: Three; wanted: Three; now: number; six: number; two: number; white: number }>;

/**
 * Worked out by the model beforehand, to a tenth (tests/tools/writeColourCases.ts), so that a problem needs
 * no model.
 */
export const coverCases: readonly CoverCase[] = [
${coverCasesOfModel().map(rowText).join('\n')}
];
`,
);

writeFileSync(
  file('trapCases'),
  `type Three = readonly [number, number, number];

/**
 * Mixes of yellow oxide and iron black, by their drops: 1, 3 to 1, 1 to 1, 1 to 2, and 1 to 1 with one of
 * orange.
 */
export const trapMixes = ['yellow', 'little-black', 'equal-black', 'much-black', 'with-orange'] as const;
export type TrapMix = (typeof trapMixes)[number];
export const trapDoses = [0.1, 0.2, 0.4, 0.6] as const;

/** Old work in one skin, L*a*b*, and for each mix, at each dose, what it adds to a* and b* at six weeks. */
export type TrapCase = Readonly<{ old: string; skin: Three; today: Three; moves: readonly (readonly (readonly [number, number])[])[] }>;

/**
 * Worked out by the model beforehand, to a tenth (tests/tools/writeColourCases.ts), so that a problem needs
 * no model.
 */
export const trapCases: readonly [TrapCase, ...TrapCase[]] = [
${trapCasesOfModel().map(rowText).join('\n')}
];
`,
);

writeFileSync(
  file('simplestCases'),
  `import type { BottleId } from '#lib/colour/pigment/bottleIds.ts';

type Three = readonly [number, number, number];

/**
 * One skin, a brown she wants, L*a*b*, four bottles; for each number of drops the nearest recipe and how far
 * it stays at its worse date.
 */
export type SimplestCase = Readonly<{ skin: Three; wanted: Three; shelf: readonly BottleId[]; rows: readonly Readonly<{ recipe: readonly number[]; apart: number }>[] }>;

/**
 * Worked out by the search beforehand, to a hundredth (tests/tools/writeColourCases.ts), so that a problem
 * needs no model.
 */
export const simplestCases: readonly SimplestCase[] = [
${simplestCasesOfModel().map(rowText).join('\n').replaceAll('"', "'").replaceAll("'recipe'", 'recipe').replaceAll("'apart'", 'apart')}
];
`,
);
