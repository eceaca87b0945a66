import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toldNumbers } from '#calculators/toldNumbers.ts';
import { shareApart, shareAtRandom, shareOfDots } from '#lib/colour/coverage/coverage.ts';
import { dotsWithin, strokesWithin } from '#lib/colour/coverage/coverageWithin.ts';
import { widened } from '#lib/colour/coverage/widened.ts';
import { drawFrom, drawNormal } from '#lib/quantities/seed.ts';
import { real } from '#tests/tools/real.ts';

const sixty = { count: 60, lengthMm: 8, widthMm: 0.18, areaMm2: 287.625 };
const sure = { count: 0, lengthMm: 0, widthMm: 0, areaMm2: 0 };

test('[hand] only the width in doubt, 0.18 ± 0.036: a fifth, so 30.04 % times and over e^0.2 = 1.2214', () => {
  const { share, lo, hi } = strokesWithin(sixty, { ...sure, widthMm: 0.036 }, shareApart);
  expect(share).toBeCloseTo(86.4 / 287.625, 10);
  expect(lo).toBeCloseTo(0.24594, 5);
  expect(hi).toBeCloseTo(0.3669, 5);
});

test('[hand] doubts of 3, 4, 12 and 84 hundredths add as squares to 85: e^0.85 = 2.3396', () => {
  const strokes = { count: 100, lengthMm: 10, widthMm: 0.1, areaMm2: 1000 };
  const { lo, hi } = strokesWithin(
    strokes,
    { count: 3, lengthMm: 0.4, widthMm: 0.012, areaMm2: 840 },
    shareApart,
  );
  expect(lo).toBeCloseTo(0.1 / 2.33965, 6);
  expect(hi).toBeCloseTo(0.1 * 2.33965, 6);
});

test('[hand] a dot’s diameter counts twice: 0.3 ± 0.03 is a fifth of the area, with 8 ± 1.2 a quarter; e^0.25 = 1.2840', () => {
  const { share, lo, hi } = dotsWithin({ perMm2: 8, diameterMm: 0.3 }, { perMm2: 1.2, diameterMm: 0.03 });
  const load = (8 * Math.PI * 0.09) / 4;
  expect(share).toBeCloseTo(1 - Math.exp(-load), 10);
  expect(hi).toBeCloseTo(1 - Math.exp(-load * 1.2840254), 6);
  expect(lo).toBeCloseTo(1 - Math.exp(-load / 1.2840254), 6);
});

/** How often, in 100, the interval from wrong readings holds the share of the true numbers. */
function held(
  one: (
    read: (value: number, giveOrTake: number) => number,
  ) => readonly [truth: number, lo: number, hi: number],
): number {
  const draw = drawFrom(11);
  let inside = 0;
  for (let i = 0; i < toldNumbers['coverage-brows']; i++) {
    const [truth, lo, hi] = one((value, giveOrTake) => value + (giveOrTake / 1.96) * drawNormal(draw));
    if (truth >= lo && truth <= hi) inside++;
  }
  return (toldNumbers['coverage-out-of'] * inside) / toldNumbers['coverage-brows'];
}

test.each([
  ['fresh, apart', 0.18, 0.03, shareApart],
  ['spread, apart', 0.35, 0.1, shareApart],
  ['fresh, crossing', 0.18, 0.03, shareAtRandom],
  ['spread, crossing', 0.35, 0.1, shareAtRandom],
] as const)(
  '[property] strokes %s: the interval holds the seeded truth in 93 to 97 of 100, 2,000 cases',
  (_, widthMm, doubtMm, cover) => {
    const off = { count: 3, lengthMm: 0.5, widthMm: doubtMm, areaMm2: 15 };
    const truth = { ...sixty, widthMm };
    const share = held((read) => {
      const seen = {
        count: read(60, off.count),
        lengthMm: read(8, off.lengthMm),
        widthMm: read(widthMm, doubtMm),
        areaMm2: read(287.625, off.areaMm2),
      };
      const { lo, hi } = strokesWithin(seen, off, cover);
      return [cover(truth), lo, hi];
    });
    expect(share).toBeGreaterThanOrEqual(toldNumbers['coverage-held-least']);
    expect(share).toBeLessThanOrEqual(toldNumbers['coverage-held-most']);
  },
);

test.each([
  [0.2, 0.03],
  [0.3, 0.06],
] as const)('[property] dots of %f mm: likewise', (diameterMm, doubtMm) => {
  const off = { perMm2: 1, diameterMm: doubtMm };
  const share = held((read) => {
    const { lo, hi } = dotsWithin({ perMm2: read(8, 1), diameterMm: read(diameterMm, doubtMm) }, off);
    return [shareOfDots({ perMm2: 8, diameterMm }), lo, hi];
  });
  expect(share).toBeGreaterThanOrEqual(toldNumbers['coverage-held-least']);
  expect(share).toBeLessThanOrEqual(toldNumbers['coverage-held-most']);
});

test('[property] ends lie inside 0 to 1 and round the share; no doubt, no width; more doubt, never less', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 400 }),
      real(1, 15),
      real(0.05, 0.8),
      real(20, 600),
      real(0, 0.5),
      (count, lengthMm, widthMm, areaMm2, part) => {
        const strokes = { count, lengthMm, widthMm, areaMm2 };
        for (const cover of [shareApart, shareAtRandom]) {
          const none = strokesWithin(strokes, sure, cover);
          expect(none.lo).toBe(none.share);
          expect(none.hi).toBe(none.share);
          const some = strokesWithin(strokes, { ...sure, lengthMm: lengthMm * part }, cover);
          const more = strokesWithin(
            strokes,
            { ...sure, lengthMm: lengthMm * part, areaMm2: areaMm2 * 0.1 },
            cover,
          );
          expect(
            more.lo >= 0 &&
              more.lo <= some.lo &&
              some.lo <= some.share &&
              some.share <= some.hi &&
              some.hi <= more.hi &&
              more.hi <= 1,
          ).toBe(true);
        }
      },
    ),
  );
  expect(strokesWithin({ ...sixty, count: 0 }, { ...sure, count: 3 }, shareAtRandom)).toEqual({
    share: 0,
    lo: 0,
    hi: 0,
  });
});

test('[hand] widened: 30 % apart from 0.2 to 0.3 is 45 %; crossing, 0.7^1.5 stays bare; never more than all', () => {
  expect(widened(0.3, 0.2, 0.3, false)).toBeCloseTo(0.45, 12);
  expect(widened(0.3, 0.2, 0.3, true)).toBeCloseTo(1 - 0.7 * Math.sqrt(0.7), 12);
  expect(widened(0.6, 0.2, 0.4, false)).toBe(1);
  expect(widened(0, 0.2, 0.4, true)).toBe(0);
  expect(widened(1, 0.2, 0.4, true)).toBe(1);
  for (const [share, fresh, spread] of [
    [-0.1, 0.2, 0.3],
    [1.1, 0.2, 0.3],
    [0.3, 0, 0.3],
    [0.3, 0.2, 0],
    [Number.NaN, 0.2, 0.3],
  ] as const)
    expect(widened(share, fresh, spread, true)).toBeUndefined();
});

test('[property] widening a share gives what the sum gives for the wide strokes', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 200 }),
      real(2, 12),
      real(0.1, 0.3),
      real(0.1, 0.6),
      real(100, 500),
      (count, lengthMm, widthMm, spreadMm, areaMm2) => {
        const strokes = { count, lengthMm, widthMm, areaMm2 };
        expect(widened(shareAtRandom(strokes), widthMm, spreadMm, true)).toBeCloseTo(
          shareAtRandom({ ...strokes, widthMm: spreadMm }),
          9,
        );
        fc.pre(shareApart(strokes) < 1);
        expect(widened(shareApart(strokes), widthMm, spreadMm, false)).toBeCloseTo(
          shareApart({ ...strokes, widthMm: spreadMm }),
          9,
        );
      },
    ),
  );
});
