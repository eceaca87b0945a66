import { expect, test } from 'vitest';
import { fromAddress, toAddress } from '#calculators/address.ts';
import { mixByDrops } from '#calculators/mixByDrops.ts';
import { startState } from '#calculators/startState.ts';
import { whyItHealed } from '#calculators/whyItHealed.ts';
import type { WhyItHealedState } from '#calculators/whyItHealedFields.ts';
import { partsWords, rangesWords } from '#words/mixNumbers.ts';
import { endsWords, lossWords, mapLabel, whyCaution, whySays } from '#words/whyItHealed.ts';

const start = startState(whyItHealed);
function shown(change: Partial<WhyItHealedState>) {
  const state = { ...start, ...change };
  const result = whyItHealed.solve(state);
  return { result, caution: whyCaution(result), ...whySays(result, state.error) };
}
function solved(change: Partial<WhyItHealedState>) {
  const { result } = shown(change);
  if (!result.ok) throw new Error(result.reason);
  return result;
}

test('[hand] the page opens on many pairs: ranges inside what was looked at, tied, and a plan that is not among them', () => {
  const { set, plan, doses } = solved({});
  expect(set.of).toBe(375);
  expect(set.ranges?.depthMm.lo).toBeGreaterThan(0.06);
  expect(set.ranges?.depthMm.hi).toBeLessThan(0.3);
  expect(set.ranges?.dose.lo).toBeGreaterThan(doses[0] ?? NaN);
  expect(set.ranges?.dose.hi).toBeLessThan(doses.at(-1) ?? NaN);
  expect(plan.fits).toEqual([]);
  const { answer, doubt, caution } = shown({});
  expect(answer).toMatch(
    /^Depths from 0\.\d\d to 0\.\d\d mm and doses from 0\.\d\d to 0\.\d\d fit, in this model\.$/,
  );
  expect(doubt).toContain('cannot be told apart here: deeper with more heals like shallower with less');
  expect(doubt).toContain('does not fit: with the assumed loss it stays');
  expect(doubt).not.toContain('more may fit beyond');
  expect(doubt.endsWith('This is what would fit, not what happened.')).toBe(true);
  expect(caution).toContain('not a question of colour');
});

test('[hand] what the plan predicts fits the plan; lighter than that by loss fits the plan with a larger loss only', () => {
  const { dates } = solved({});
  const planned = dates[0]?.planned ?? { l: NaN, a: NaN, b: NaN };
  const asPlanned = { healedL: planned.l, healedA: planned.a, healedB: planned.b, error: 1 };
  expect(solved(asPlanned).planAway).toBeCloseTo(0, 9);
  expect(shown(asPlanned).doubt).toContain('The plan, 0.10 mm with dose 0.30, fits too.');
  // The same plan seen after three years is lighter: read at one year, only more loss explains it.
  const faded = solved({ age: 'three-years' }).dates[0]?.planned ?? planned;
  expect(faded.l).toBeGreaterThan(planned.l);
  expect(shown({ healedL: faded.l, healedA: faded.a, healedB: faded.b, error: 1.5 }).doubt).toMatch(
    /fits only with (1\.5 to )?2 times the assumed loss/,
  );
});

test('[hand] not explained: the nearest pair with its distance, other reasons, and no blame', () => {
  const { answer, doubt, result } = shown({ healedA: -6, error: 1 });
  expect(answer).toBe('Nothing looked at fits: what was read is not explained by this model.');
  expect(doubt).toMatch(/still \d+\.\d away, where 1\.0 is allowed\./);
  expect(doubt).toContain('Check the share of skin covered first');
  expect(doubt).toContain('none is a fault by itself');
  expect(result.ok && mapLabel(result)).toContain('None of 375 fits.');
});

test('[hand] a second reading narrows the map, and both dates have swatches', () => {
  const [one, two] = [
    solved({}),
    solved({ second: 'three-years', secondL: 57, secondA: 10.6, secondB: 15.5 }),
  ];
  expect(two.set.count).toBeLessThan(one.set.count);
  expect(two.dates.map(({ age }) => age)).toEqual(['one-year', 'three-years']);
});

test('[hand] no drops, no dose range, no skin: each says what to change', () => {
  expect(shown({ 'brown-yellow-heavy': 0, orange: 0 }).answer).toBe('There is no drop in the mix yet.');
  expect(shown({ doseLo: 0.5, doseHi: 0.5 }).doubt).toBe('Highest dose must be above the lowest dose.');
  expect(shown({ doseLo: 0.5, doseHi: 0.51 }).result.ok).toBe(true);
});

test('[hand] ranges in words', () => {
  expect(endsWords({ lo: 0.1, hi: 0.28 })).toBe('0.10 to 0.28');
  expect(endsWords({ lo: 0.281, hi: 0.284 })).toBe('0.28');
  expect(lossWords({ lo: 1, hi: 1 })).toBe('the assumed loss');
  expect(lossWords({ lo: 0.75, hi: 2 })).toBe('0.75 to 2 times the assumed loss');
  expect(lossWords({ lo: 0.5, hi: 0.5 })).toBe('0.5 times the assumed loss');
});

test('[property] an address of this page, as far as mix, skin and plan go, is read by Mix by drops', () => {
  const state: WhyItHealedState = {
    ...start,
    skinL: 48,
    oldWork: 'ash-grey',
    depth: 0.14,
    dose: 0.4,
    coverage: 80,
    orange: 0,
    'black-iron': 2,
  };
  const { state: read, refused } = fromAddress(mixByDrops, toAddress(whyItHealed, state));
  expect(refused).toEqual([]);
  expect(read).toMatchObject({
    skinL: 48,
    oldWork: 'ash-grey',
    depth: 0.14,
    dose: 0.4,
    coverage: 80,
    orange: 0,
    'black-iron': 2,
  });
});

test('[hand] the parts of a mix add to 100, and a range breaks between coordinates only', () => {
  // Three drops of 5 : 2 : 3 and one of 5 : 4 with 1 white: (3 × 0.7 + 0.9) ÷ 4 warm, 0.1 ÷ 4 white.
  const mix = mixByDrops.solve(startState(mixByDrops));
  if (!mix.ok) throw new Error(mix.reason);
  expect(mix.warmShare).toBeCloseTo(0.75, 12);
  expect(partsWords(mix)).toBe('Of 100 parts of pigment: 75 yellow and red, 22 dark, 3 white.');
  expect(rangesWords({ l: [44.12, 52], a: [-0.04, 2], b: [3, 4] }).split(' ')).toEqual([
    'L*\u00a044.1\u00a0to\u00a052.0,',
    'a*\u00a00.0\u00a0to\u00a02.0,',
    'b*\u00a03.0\u00a0to\u00a04.0',
  ]);
});
