import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromAddress, toAddress } from '#calculators/address.ts';
import { sheetScale } from '#calculators/sheets/paper.ts';
import { levelFaceMarks } from '#calculators/levelFaceMarks.ts';
import { outlineSheet } from '#calculators/sheets/outlineSheet.ts';
import { practiceSheet } from '#calculators/sheets/practiceSheet.ts';
import { startState } from '#calculators/startState.ts';
import { libraryVersion } from '#lib/version.ts';
import { scaledFor, sheetFoot } from '#words/sheets.ts';

test('[hand] sheets and files name the version of the package', () => {
  expect(libraryVersion).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version);
});

describe('[hand] a printer that is off', () => {
  test('[hand] a bar of 100 that reads 80 asks for a drawing 1.25 times as large, on its own axis only', () => {
    expect(sheetScale({ paper: 'a4', across: 80, up: 100 })).toEqual({ across: 1.25, up: 1 });
    expect(sheetScale({ paper: 'a4', across: 100, up: 125 })).toEqual({ across: 1, up: 0.8 });
  });
  test('[hand] a reading below 90 or above 110 is refused with its name; the ends are taken', () => {
    expect(fromAddress(practiceSheet, 'across=90&up=110').refused).toEqual([]);
    for (const query of ['across=89.9', 'up=110.1'])
      expect(fromAddress(practiceSheet, query).refused.map(({ refusal }) => refusal.code)).toEqual([
        'out-of-range',
      ]);
  });
  test('[hand] the foot speaks of the printer only when something was corrected', () => {
    expect(scaledFor(1, 1)).toBe('');
    expect(scaledFor(1.25, 1)).toBe('Drawn 1.250 across and 1.000 up for one printer');
    expect(sheetFoot(['Face 7'], '9.9.9')).toBe('Face 7 · Tautline 9.9.9');
  });
});

test('[property] any address gives a whole sheet: known face, level and scale; the state goes through an address unchanged', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 80 }),
      fc.dictionary(
        fc.constantFrom('seed', 'level', 'paper', 'across', 'up'),
        fc.oneof(fc.string(), fc.integer({ min: -20, max: 1200 }).map(String)),
      ),
      (noise, pairs) => {
        const { state } = fromAddress(practiceSheet, `${new URLSearchParams(pairs)}&${noise}`);
        const { seed, level, scale } = practiceSheet.solve(state);
        expect(Number.isInteger(seed) && seed >= 0 && seed <= 999).toBe(true);
        expect([0, 1, 2, 3]).toContain(level);
        for (const factor of [scale.across, scale.up])
          expect(factor >= 100 / 110 && factor <= 100 / 90).toBe(true);
        expect(fromAddress(practiceSheet, toAddress(practiceSheet, state)).state).toEqual(state);
      },
    ),
    { numRuns: 2000 },
  );
});

test('[hand] the outline sheet reads the ten marks of a link and leaves the rest at the level face', () => {
  const { state, refused } = fromAddress(outlineSheet, 'archTopR=-40_30&tailL=60_20&paper=letter&across=90');
  const { brows, scale } = outlineSheet.solve(state);
  expect(refused).toEqual([]);
  expect(brows.right.archTop).toEqual({ uMm: 40, vMm: 30 });
  expect(brows.left.tail).toEqual({ uMm: 60, vMm: 20 });
  expect(brows.left.archTop).toEqual({ uMm: levelFaceMarks.archTopL.xMm, vMm: levelFaceMarks.archTopL.yMm });
  expect(scale.across).toBeCloseTo(10 / 9, 12);
  expect(scale.up).toBe(1);
});

test('[hand] an address that asks for nothing is the sheet that stands in the page', () => {
  expect(fromAddress(practiceSheet, '').state).toEqual(startState(practiceSheet));
});
