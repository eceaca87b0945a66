import { describe, expect, test } from 'vitest';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { mixOutlook } from '#lib/colour/healing/mixOutlook.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import {
  leftOf,
  ninetyOf,
  outcomesAround,
  plainPrediction,
  simulatedHealings,
  type Ageing,
  type Doubts,
  type Plan,
} from '#lib/colour/healing/uncertainHealing.ts';

const skin = skinOptics({ l: 63, a: 10, b: 19 });
if (!skin.ok) throw new Error(skin.reason);
const sure: Doubts = { strength: 0, dose: 0, depth: 0, kept: 0, lost: 0, veilLo: 0.35, veilHi: 0.35 };
const ageing: Ageing = { ...startAgeing, '77499': { keptAtSixWeeks: 0.4, lostPerYear: 0.2 } };
/** Iron black alone: more of it is darker, deeper is lighter. */
const plan: Plan = {
  shares: { '77891': 0, '77492': 0, '77491': 0, '77499': 1, '77266': 0 },
  dose: 0.1,
  setting: { depthMm: 0.12, coverage: 0.6, veilShare: 0.35 },
  ageing,
  doubts: sure,
};
const with499 = (keptAtSixWeeks: number, lostPerYear: number): Ageing => ({
  ...ageing,
  '77499': { keptAtSixWeeks, lostPerYear },
});
const lightnesses = (doubts: Partial<Doubts>, years: number, one: Plan = plan) =>
  simulatedHealings(skin, { ...one, doubts: { ...sure, ...doubts } }, [years], 1500, 5).map(
    ([lab]) => lab?.l ?? NaN,
  );
const shareBelow = (list: readonly number[], edge: number) =>
  list.filter((value) => value < edge).length / list.length;
const e = Math.exp;

describe('each doubt alone spreads as it says: 15.9 of 100 healings lie beyond one spread to either side, half beyond none', () => {
  const spread = 0.3;
  const predicted = (change: Partial<Plan>, years: number) =>
    plainPrediction(skin, { ...plan, ...change }, years).l;
  test.each([
    [
      'strength',
      { strength: spread },
      0,
      [-1, 0, 1].map((by) => predicted({ dose: 0.1 * e(-by * spread) }, 0)),
    ],
    ['dose', { dose: spread }, 0, [-1, 0, 1].map((by) => predicted({ dose: 0.1 * e(-by * spread) }, 0))],
    [
      'depth',
      { depth: spread },
      0,
      [-1, 0, 1].map((by) => predicted({ setting: { ...plan.setting, depthMm: 0.12 * e(by * spread) } }, 0)),
    ],
    [
      'kept',
      { kept: spread },
      0,
      [-1, 0, 1].map((by) => predicted({ ageing: with499(0.4 * e(-by * spread), 0.2) }, 0)),
    ],
    [
      'lost',
      { lost: spread },
      3,
      [-1, 0, 1].map((by) => predicted({ ageing: with499(0.4, 0.2 * e(by * spread)) }, 3)),
    ],
  ] as const)('[hand] %s', (_, doubts, years, edges) => {
    const seen = lightnesses(doubts, years);
    [0.1587, 0.5, 0.8413].forEach((share, i) =>
      expect(Math.abs(shareBelow(seen, edges[i] ?? NaN) - share)).toBeLessThan(0.035),
    );
  });

  test('[hand] the veil lies evenly in its range: a quarter of the healings below its first quarter', () => {
    const seen = lightnesses({ veilLo: 0.2, veilHi: 0.6 }, 0);
    for (const share of [0, 0.25, 0.5, 0.75, 1]) {
      const edge = plainPrediction(
        skin,
        { ...plan, setting: { ...plan.setting, veilShare: 0.2 + 0.4 * share } },
        0,
      ).l;
      expect(Math.abs(shareBelow(seen, edge) - share)).toBeLessThan(0.04);
    }
  });

  test('[hand] no more is kept than there was, and no more is lost', () => {
    const most = plainPrediction(skin, { ...plan, ageing: with499(1, 0) }, 0).l;
    const kept = lightnesses({ kept: 0.5 }, 0, { ...plan, ageing: with499(1, 0) });
    expect(Math.min(...kept)).toBeCloseTo(most, 9);
    expect(kept.filter((value) => Math.abs(value - most) < 1e-9).length / kept.length).toBeCloseTo(0.5, 1);
    const gone = lightnesses({ lost: 0.5 }, 2, { ...plan, ageing: with499(0.4, 1) });
    const bare = spectrumToLab(skin.reflectance).l;
    expect(Math.max(...gone)).toBeCloseTo(bare, 9);
    expect(gone.filter((value) => Math.abs(value - bare) < 1e-9).length / gone.length).toBeCloseTo(0.5, 1);
  });

  test.each(['strength', 'kept', 'lost'] as const)(
    '[property] %s differs from pigment to pigment: healings of a mix that are equally light differ in yellow',
    (doubt) => {
      const mix = {
        ...plan,
        shares: { ...plan.shares, '77492': 0.6, '77499': 0.4 },
        doubts: { ...sure, [doubt]: 0.4 },
      };
      const seen = simulatedHealings(skin, mix, [2], 400, 5)
        .flat()
        .toSorted((one, other) => one.l - other.l);
      const apart = seen
        .slice(1)
        .filter(
          ({ l, b }, i) =>
            Math.abs(l - (seen[i]?.l ?? NaN)) < 0.05 && Math.abs(b - (seen[i]?.b ?? NaN)) > 0.2,
        );
      expect(apart.length).toBeGreaterThan(20);
    },
  );

  test('[property] one healing keeps its draws through the years: nothing doubted but the loss leaves six weeks alone', () => {
    const both = simulatedHealings(skin, { ...plan, doubts: { ...sure, lost: 0.4 } }, [0, 2], 30, 3);
    const at0 = plainPrediction(skin, plan, 0);
    for (const [weeks, later] of both) {
      expect(weeks?.l).toBeCloseTo(at0.l, 9);
      expect(later?.l).not.toBeCloseTo(plainPrediction(skin, plan, 2).l, 6);
    }
  });

  test('[property] under tungsten every healing is redder', () => {
    const [day, warm] = (['D65', 'A'] as const).map((lamp) =>
      simulatedHealings(skin, { ...plan, doubts: startDoubts }, [0], 20, 9, lamp).flat(),
    );
    warm?.forEach(({ a }, i) => expect(a).toBeGreaterThan((day?.[i]?.a ?? NaN) + 1));
  });
});

test('[hand] what is left, pigment by pigment', () => {
  const left = leftOf(startAgeing, 3);
  for (const id of ['77891', '77492', '77491', '77499', '77266'] as const)
    expect(left[id]).toBeCloseTo(startAgeing[id].keptAtSixWeeks * (1 - startAgeing[id].lostPerYear) ** 3, 12);
});

test('[hand] counts around a target at their edges: on the difference counts, 2 darker or 15° turned does not', () => {
  const target = { l: 40, a: 10, b: 0 };
  const turned = (deg: number) => ({
    l: 40,
    a: 10 * Math.cos((deg * Math.PI) / 180),
    b: 10 * Math.sin((deg * Math.PI) / 180),
  });
  const near = ciede2000({ l: 41, a: 10, b: 0 }, target);
  expect(outcomesAround([{ l: 41, a: 10, b: 0 }], target, near).near).toBe(1);
  expect(
    outcomesAround(
      [
        { l: 38, a: 10, b: 0 },
        { l: 37.99, a: 10, b: 0 },
      ],
      target,
      1,
    ).darker,
  ).toBe(0.5);
  expect(outcomesAround([turned(14.9), turned(15.1), turned(-14.9), turned(-15.1)], target, 1)).toMatchObject(
    { leanRed: 0.25, leanGreen: 0.25 },
  );
  expect(outcomesAround([], target, 1)).toEqual({ near: 0, darker: 0, leanRed: 0, leanGreen: 0 });
});

test('[hand] twentieths between two values: of 1 to 11 they lie at 1.5 and 10.5; of one value, it; of none, 0', () => {
  expect(ninetyOf([7, 3, 11, 1, 9, 5, 2, 4, 6, 8, 10])).toEqual([1.5, 10.5]);
  expect(ninetyOf([4])).toEqual([4, 4]);
  expect(ninetyOf([])).toEqual([0, 0]);
});

describe('the outlook of a mix, counted again from the same healings', () => {
  const yellow: Plan = {
    ...plan,
    shares: { '77891': 0, '77492': 0.3, '77491': 0.1, '77499': 0.6, '77266': 0 },
    dose: 0.8,
    setting: { ...plan.setting, coverage: 0.95 },
    doubts: { ...startDoubts, strength: 0.5 },
  };
  const times = [0, 2];
  const outlookOf = () => mixOutlook(skin, yellow, times, 300, 11);
  const hue = ({ a, b }: { a: number; b: number }) => (Math.atan2(b, a) * 180) / Math.PI;

  test('[hand] turned by more than 15° either way; the band at a twentieth, a quarter, half, three quarters and all but a twentieth', () => {
    const outlook = outlookOf();
    const healings = simulatedHealings(skin, yellow, times, 300, 11);
    outlook.times.forEach(({ plain, leanRed, leanGreen, band, lightness }, i) => {
      const seen = healings.flatMap((one) => one[i] ?? []);
      expect(leanRed).toBeCloseTo(seen.filter((lab) => hue(lab) < hue(plain) - 15).length / 300, 12);
      expect(leanGreen).toBeCloseTo(seen.filter((lab) => hue(lab) > hue(plain) + 15).length / 300, 12);
      const sorted = seen.toSorted((one, other) => one.l - other.l);
      expect(band).toEqual([15, 75, 150, 224, 284].map((place) => sorted[place]));
      expect(lightness).toEqual(ninetyOf(seen.map(({ l }) => l)));
    });
    expect(outlook.times.some(({ leanRed, leanGreen }) => leanRed > 0 && leanGreen > 0)).toBe(true);
  });

  test('[hand] what changes is the difference between today and six weeks; without yellow and red as if none of both were left', () => {
    const outlook = outlookOf();
    expect(outlook.today).toEqual(spectrumToLab(skin.reflectance));
    expect(outlook.changes).toBe(ciede2000(outlook.times[0]?.plain ?? outlook.today, outlook.today));
    const gone: Ageing = {
      ...ageing,
      '77492': { keptAtSixWeeks: 0, lostPerYear: 0 },
      '77491': { keptAtSixWeeks: 0, lostPerYear: 0 },
    };
    for (const { dark, years } of outlook.times)
      expect(dark.plain).toEqual(plainPrediction(skin, { ...yellow, ageing: gone }, years));
    outlook.times.forEach(({ covered, years }) =>
      expect(covered).toEqual(
        plainPrediction(skin, { ...yellow, setting: { ...yellow.setting, coverage: 1 } }, years),
      ),
    );
  });

  test('[hand] no times, no healings: today is told, nothing changes', () => {
    const none = mixOutlook(skin, yellow, [], 10, 1);
    expect([none.times, none.changes]).toEqual([[], 0]);
    expect(mixOutlook(skin, yellow, [0], 0, 1).times[0]).toMatchObject({
      band: [],
      leanRed: 0,
      leanGreen: 0,
    });
  });
});
