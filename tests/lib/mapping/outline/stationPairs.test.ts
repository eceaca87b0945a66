import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FrontEdge } from '#lib/mapping/placing/drawnLengths.ts';
import { outlinesOf, stationPairs, type StationPair } from '#lib/mapping/outline/stationPairs.ts';
import { stationMm, thicknessAtStation } from '#lib/mapping/outline/station.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { thicknessAt } from '#lib/mapping/outline/thickness.ts';
import { thicknessSlopes } from '#lib/mapping/outline/thicknessSlopes.ts';
import { drawFrom, drawNormal } from '#lib/quantities/seed.ts';
import { real } from '../../../tools/real.ts';
import { at, bar, brows, example, outlined } from './brows.ts';
import { checked, find } from './tradePair.ts';

/** One station of two brows, marks read to 0.3 mm, k = 2. */
function pairOf(right: Brow, left: Brow, share: number): StationPair {
  const [pair] = stationPairs({ right, left }, outlinesOf({ right, left }), {
    stations: [share],
    edge: 'frontLower',
    readingMm: 0.3,
    k: 2,
  });
  if (!pair) throw new Error('No station.');
  return pair;
}

const slopeOf = (brow: Brow, edge: FrontEdge, share: number) => thicknessSlopes(brow, edge, [0.4, share])[1];

describe('thickness of both brows at one station', () => {
  it('[hand] a bar 8 thick against a bar 9.5 thick: 1.5, left minus right', () => {
    const thicker: Brow = { ...bar, frontTop: at(16, 19.5), archTop: at(40, 19.5) };
    const pair = pairOf(bar, thicker, 0.3);
    expect(pair.difference?.value).toBeCloseTo(1.5, 9);
    expect(find(checked(bar, thicker, { stations: [0.3] }), 'thickness', 0.3).value.value).toBeCloseTo(
      1.5,
      9,
    );
  });
  it('[hand] half way to the arch a level bar’s thickness moves by √(2(0.3125² + 0.6875²)) for each mm of its marks', () => {
    const slope = Math.sqrt(2 * (0.3125 ** 2 + 0.6875 ** 2));
    expect(slopeOf(bar, 'frontLower', 0.3)).toBeCloseTo(slope, 4);
    const pair = pairOf(bar, bar, 0.3);
    expect(pair.difference?.hi).toBeCloseTo(2 * 0.3 * Math.SQRT2 * slope, 4);
  });
  it('[property] spread of 3,000 read-again thicknesses within 6 % of the slope’s', () => {
    const readingMm = 0.2;
    for (const [seed, share] of [
      [1, 0.3],
      [2, 0.6],
      [3, 0.85],
    ] as const) {
      const draw = drawFrom(seed);
      const jitter = ({ uMm, vMm }: Brow['tail']) =>
        at(uMm + readingMm * drawNormal(draw), vMm + readingMm * drawNormal(draw));
      const read: number[] = [];
      for (let i = 0; i < 3000; i++) {
        const { frontLower, frontTop, archTop, archLower, tail } = example;
        const again = {
          frontLower: jitter(frontLower),
          frontTop: jitter(frontTop),
          archTop: jitter(archTop),
          archLower: jitter(archLower),
          tail: jitter(tail),
        };
        const thickness = thicknessAtStation(outlineOf(again), 'frontLower', share);
        if (thickness.ok) read.push(thickness.thicknessMm);
      }
      const mean = read.reduce((sum, mm) => sum + mm, 0) / read.length;
      const spread = Math.sqrt(read.reduce((sum, mm) => sum + (mm - mean) ** 2, 0) / (read.length - 1));
      expect(Math.abs(spread / (readingMm * (slopeOf(example, 'frontLower', share) ?? 0)) - 1)).toBeLessThan(
        0.06,
      );
    }
  });
  it('[hand] no slope where a small step leaves no thickness', () => {
    expect(slopeOf(bar, 'frontTop', 0)).toBeUndefined();
    expect(slopeOf(bar, 'frontTop', -0.1)).toBeUndefined();
  });
  it('[property] a brow against itself differs by nothing; sides exchanged, the sign changes', () => {
    fc.assert(
      fc.property(brows, brows, real(0.2, 0.9), (one, other, share) => {
        const same = pairOf(one, one, share);
        if (same.difference) expect(same.difference.value).toBe(0);
        const there = pairOf(one, other, share);
        const back = pairOf(other, one, share);
        if (there.difference && back.difference)
          expect(there.difference.value).toBeCloseTo(-back.difference.value, 12);
        expect(there.left).toEqual(thicknessAt(outlined(other), stationMm(other, 'frontLower', share)));
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });
});
