import { numberField } from './fields.ts';
import type { OldWork } from '#lib/colour/old/oldWorks.ts';
import { skinFields } from './skinFields.ts';
import type { Calculator } from './spec.ts';

export type FindRecipeState = Readonly<{
  skinL: number;
  skinA: number;
  skinB: number;
  oldWork: OldWork;
  depth: number;
  coverage: number;
  targetL: number;
  targetA: number;
  targetB: number;
  bottles: number;
  drops: number;
  white: number;
  darker: number;
  lean: number;
}>;

/** Doses searched, from a wash to as dark as the model lays pigment. */
export const dosesSearched = [0.05, 0.1, 0.15, 0.2, 0.3, 0.45, 0.65] as const;

/** The inputs of the recipe search, without the search: that runs beside the page. */
export const findRecipeFields: Calculator<FindRecipeState, undefined> = {
  id: 'find-a-recipe',
  fields: {
    ...skinFields,
    targetL: numberField('targetL', 50, { unit: '1', lo: 15, hi: 75, step: 1, decimals: 1 }),
    targetA: numberField('targetA', 10, { unit: '1', lo: -5, hi: 25, step: 1, decimals: 1 }),
    targetB: numberField('targetB', 13, { unit: '1', lo: -5, hi: 30, step: 1, decimals: 1 }),
    bottles: numberField('bottles', 3, { unit: '1', lo: 1, hi: 4, step: 1, decimals: 0 }),
    drops: numberField('drops', 6, { unit: '1', lo: 1, hi: 16, step: 1, decimals: 0 }),
    white: numberField('white', 10, { unit: '%', lo: 0, hi: 100, step: 5, decimals: 0 }),
    darker: numberField('darker', 5, { unit: '1', lo: 0, hi: 50, step: 1, decimals: 1 }),
    lean: numberField('lean', 30, { unit: '°', lo: 0, hi: 180, step: 5, decimals: 0 }),
  },
  solve: () => undefined,
};
