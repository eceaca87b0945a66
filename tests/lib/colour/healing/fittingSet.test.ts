import { expect, test } from 'vitest';
import { fittingSet } from '#lib/colour/healing/fittingSet.ts';
import type { HealingCell } from '#lib/colour/healing/healingMap.ts';

const cell = (depthMm: number, dose: number, difference: number, fits: readonly number[]): HealingCell => ({
  depthMm,
  dose,
  difference,
  fits,
  loss: fits[0] ?? 1,
});

test('[hand] ranges over what fits, row by row and as a whole', () => {
  const set = fittingSet([
    cell(0.2, 0.3, 1.9, [1.5]),
    cell(0.2, 0.4, 0.8, [1, 1.5]),
    cell(0.1, 0.3, 1.5, [1, 2]),
    cell(0.1, 0.4, 2.6, []),
    cell(0.3, 0.3, 4, []),
    cell(0.3, 0.4, 3.5, []),
  ]);
  expect(set).toMatchObject({
    count: 3,
    of: 6,
    ranges: { depthMm: { lo: 0.1, hi: 0.2 }, dose: { lo: 0.3, hi: 0.4 }, loss: { lo: 1, hi: 2 } },
    isTied: true,
  });
  expect(set.nearest).toMatchObject({ depthMm: 0.2, dose: 0.4 });
  expect(set.rows).toEqual([
    {
      depthMm: 0.1,
      looks: ['as-assumed', 'none'],
      doses: { lo: 0.3, hi: 0.3 },
      losses: { lo: 1, hi: 2 },
      difference: 1.5,
    },
    {
      depthMm: 0.2,
      looks: ['another-loss', 'as-assumed'],
      doses: { lo: 0.3, hi: 0.4 },
      losses: { lo: 1, hi: 1.5 },
      difference: 0.8,
    },
    { depthMm: 0.3, looks: ['none', 'none'], doses: undefined, losses: undefined, difference: 3.5 },
  ]);
});

test('[hand] not tied where deeper needs no more: the same doses at both depths, fewer, or one depth alone', () => {
  const same = [cell(0.1, 0.3, 1, [1]), cell(0.2, 0.3, 1, [1])];
  expect(fittingSet(same).isTied).toBe(false);
  expect(fittingSet([...same, cell(0.2, 0.4, 1, [1])]).isTied).toBe(true);
  expect(fittingSet([...same, cell(0.1, 0.4, 1, [1])]).isTied).toBe(false);
  expect(fittingSet([cell(0.1, 0.3, 1, [1]), cell(0.1, 0.4, 1, [1]), cell(0.2, 0.9, 5, [])]).isTied).toBe(
    false,
  );
  // The deepest counts, not one between.
  expect(fittingSet([cell(0.1, 0.3, 1, [1]), cell(0.2, 0.9, 1, [1]), cell(0.3, 0.2, 1, [1])]).isTied).toBe(
    false,
  );
  expect(fittingSet([cell(0.1, 0.3, 1, [1]), cell(0.2, 0.2, 1, [1]), cell(0.3, 0.4, 1, [1])]).isTied).toBe(
    true,
  );
});

test('[hand] nothing fits: no ranges, and still the nearest', () => {
  const set = fittingSet([cell(0.1, 0.3, 7, []), cell(0.2, 0.3, 6, [])]);
  expect(set).toMatchObject({
    count: 0,
    of: 2,
    ranges: undefined,
    isTied: false,
    nearest: { depthMm: 0.2, difference: 6 },
  });
  expect(fittingSet([])).toEqual({
    count: 0,
    of: 0,
    ranges: undefined,
    isTied: false,
    nearest: undefined,
    rows: [],
  });
});
