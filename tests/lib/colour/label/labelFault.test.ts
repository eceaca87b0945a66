import { expect, test } from 'vitest';
import { labelFaults, labelFaultsOf, type InkLabel } from '#lib/colour/label/labelFault.ts';

const whole: InkLabel = {
  saysUse: true,
  hasLot: true,
  listsIngredients: true,
  last: { year: 2027, month: 3 },
};
const at = (year: number, month: number, label: Partial<InkLabel> = {}) =>
  labelFaultsOf({ ...whole, ...label }, { year, month });

test('[hand] a bottle lasts through its last month, over the turn of the year too', () => {
  expect([at(2027, 2), at(2027, 3), at(2026, 12)]).toEqual([[], [], []]);
  expect([at(2027, 4), at(2028, 1), at(2028, 3)]).toEqual([['past'], ['past'], ['past']]);
  expect(at(2027, 1, { last: { year: 2026, month: 12 } })).toEqual(['past']);
  expect(at(2026, 12, { last: { year: 2027, month: 1 } })).toEqual([]);
});

test('[hand] each missing thing is named, and all of them in the order of the list', () => {
  expect(at(2027, 1, { saysUse: false })).toEqual(['no-use']);
  expect(at(2027, 1, { hasLot: false })).toEqual(['no-lot']);
  expect(at(2027, 1, { listsIngredients: false })).toEqual(['no-list']);
  expect(at(2030, 1, { saysUse: false, hasLot: false, listsIngredients: false })).toEqual([...labelFaults]);
});
