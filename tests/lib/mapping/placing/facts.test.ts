import { expect, it } from 'vitest';
import { placingFacts, placingHabits } from '#lib/mapping/facts/placing.ts';
import { nostrilMiddleShare } from '#lib/mapping/numbers/start.ts';

it('[property] of the numbers behind front and tail at least three in five are published', () => {
  const all = Object.values(placingFacts);
  expect(
    all.filter(({ backing }) => backing.status === 'published').length / all.length,
  ).toBeGreaterThanOrEqual(0.6);
});

it('[hand] habits claim no source; computed numbers follow from their parents', () => {
  for (const { backing } of Object.values(placingHabits)) expect(backing.status).toBe('common-practice');
  // (43.2 − 32.2) / 2 and (40.7 − 32.1) / 2
  expect(placingFacts['wing-beyond-corner-first-mm'].value).toBeCloseTo(
    (placingFacts['nose-width-first-mm'].value - placingFacts['corner-gap-first-mm'].value) / 2,
    9,
  );
  expect(placingFacts['wing-beyond-corner-second-mm'].value).toBeCloseTo(
    (placingFacts['nose-width-second-mm'].value - placingFacts['corner-gap-second-mm'].value) / 2,
    9,
  );
  expect(placingFacts['nostril-middle-share'].value / 100).toBe(nostrilMiddleShare);
});
