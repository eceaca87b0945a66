import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FrontEdge } from '#lib/mapping/placing/drawnLengths.ts';
import { outlinesOf, stationPairs, type StationPair } from '#lib/mapping/outline/stationPairs.ts';
import { stationMm, thicknessAtStation } from '#lib/mapping/outline/station.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { thicknessAt } from '#lib/mapping/outline/thickness.ts';
import { thicknessSlopes } from '#lib/mapping/outline/thicknessSlopes.ts';
import {
  tradeCheckCount,
  tradeChecks,
  type BrowsOnFace,
  type TradeCheck,
  type TradeChoices,
  type TradeReport,
} from '#lib/mapping/outline/tradeChecks.ts';
import { drawFrom, drawNormal } from '#lib/quantities/seed.ts';
import { real } from '../../../tools/real.ts';
import { at, bar, brows, example, outlined } from './brows.ts';

const face = { noseWing: at(20, -40), innerCorner: at(16, -1), outerCorner: at(50, 0) };
const brow: Brow = {
  frontLower: at(16, 10),
  frontTop: at(17, 17),
  archTop: at(40, 21),
  archLower: at(39, 15),
  tail: at(55, 12),
};
const choices: TradeChoices = {
  anchor: 'inner-corner',
  ownMm: 18,
  edge: 'frontLower',
  nostrilShare: 0.6,
  readingMm: 0.3,
  k: 2,
  stations: [0.25, 0.5],
};

function checked(
  right: Partial<BrowsOnFace['right']> = {},
  left: Partial<BrowsOnFace['left']> = {},
  more: Partial<TradeChoices> = {},
): TradeReport {
  const report = tradeChecks(
    { right: { ...face, ...brow, ...right }, left: { ...face, ...brow, ...left } },
    { ...choices, ...more },
  );
  if (!report.ok) throw new Error(report.reason);
  return report;
}
const find = ({ checks }: TradeReport, id: TradeCheck['id'], of?: string | number): TradeCheck => {
  const found = checks.find(
    (check) =>
      check.id === id &&
      (of === undefined ||
        ('side' in check && check.side === of) ||
        ('share' in check && check.share === of)),
  );
  if (!found) throw new Error(`No check ${id}.`);
  return found;
};

describe('trade checks of two brows', () => {
  it('[hand] two equal brows: every difference 0 and not shown; the tails keep every limit; fronts on the anchor', () => {
    const report = checked();
    const equal = report.checks.filter(({ kind }) => kind === 'equal');
    expect(equal.map(({ id }) => id)).toEqual([
      'fronts-equally-far',
      'level-frontLower',
      'level-frontTop',
      'level-archTop',
      'level-archLower',
      'level-tail',
      'lengths',
      'thickness',
      'thickness',
    ]);
    for (const { value, verdict } of equal) expect([value.value, verdict]).toEqual([0, 'not-shown']);
    expect(find(report, 'front-on-anchor', 'right')).toMatchObject({
      kind: 'anchor',
      side: 'right',
      verdict: 'not-shown',
    });
    // 2 over the front's lower edge, 5 under its top, 4 inside the line level (59 at 12 mm up), 3.2 the
    // shortest way.
    expect(find(report, 'tail-over-front-lower', 'right').value.value).toBe(2);
    expect(find(report, 'tail-under-front-top', 'left').value.value).toBe(5);
    expect(find(report, 'tail-inside-line', 'left').value.value).toBeCloseTo(3.2, 9);
    expect(report.checks.filter(({ kind }) => kind === 'limit').map(({ verdict }) => verdict)).toEqual([
      'keeps',
      'keeps',
      'keeps',
      'keeps',
      'keeps',
      'keeps',
    ]);
  });
  it('[hand] each check sees its own change, left minus right', () => {
    const report = checked(
      {},
      {
        frontLower: at(17.5, 12),
        frontTop: at(18, 16),
        archTop: at(40, 23),
        archLower: at(39, 13.5),
        tail: at(58, 9),
      },
    );
    const values = [
      'fronts-equally-far',
      'level-frontLower',
      'level-frontTop',
      'level-archTop',
      'level-archLower',
      'level-tail',
      'lengths',
    ] as const;
    expect(values.map((id) => Number(find(report, id).value.value.toFixed(9)))).toEqual([
      1.5, 2, -1, 2, -1.5, -3, 1.5,
    ]);
    expect(find(report, 'level-archTop').verdict).toBe('differs');
    expect(find(report, 'front-on-anchor', 'left')).toMatchObject({
      verdict: 'differs',
      value: { value: 1.5 },
    });
    expect(find(report, 'tail-over-front-lower', 'left')).toMatchObject({
      verdict: 'breaks',
      value: { value: -3 },
    });
    expect(find(report, 'tail-over-front-lower', 'right').verdict).toBe('keeps');
  });
  it('[hand] the front is where it is said to be measured: at its upper mark 17, one mm out of the anchor, 38 mm long', () => {
    const report = checked({}, { frontTop: at(19, 17) }, { edge: 'frontTop' });
    expect(find(report, 'front-on-anchor', 'right').value.value).toBe(1);
    expect(find(report, 'fronts-equally-far').value.value).toBe(2);
    expect(find(report, 'lengths').value.value).toBe(-2);
    expect(find(checked(), 'front-on-anchor', 'right').value.value).toBe(0);
  });
  it.each([
    ['inner-corner', 16, Math.sqrt(1 + 0.389 ** 2 + 0.5)],
    ['nose-wing', 20, Math.sqrt(1 + 0.389 ** 2 + 0.5)],
    ['nostril-middle', 12, Math.sqrt(1 + 0.389 ** 2 + 0.18)],
    ['own', 18, Math.sqrt(1 + 0.389 ** 2)],
  ] as const)(
    '[hand] on %s at %d mm: off by what is left, half-width 2 · 0.3 · the parts',
    (anchor, anchorMm, share) => {
      const { value } = find(checked({}, {}, { anchor }), 'front-on-anchor', 'left');
      expect(value.value).toBeCloseTo(16 - anchorMm, 12);
      expect(value.hi - value.value).toBeCloseTo(0.6 * share, 12);
    },
  );
  it('[hand] half-width of two arches 80 mm apart: 0.6 · √(2 + (0.0071 · 80)²)', () => {
    const { value } = find(checked(), 'level-archTop');
    expect(value.hi).toBeCloseTo(0.6 * Math.sqrt(2 + 0.568 ** 2), 12);
    expect(value.k).toBe(2);
  });
  it('[hand] counted together: 2 + 5 heights + stations + 4 a side', () => {
    expect(tradeCheckCount(4)).toBe(19);
    expect(checked().checks).toHaveLength(tradeCheckCount(2));
  });
  it('[hand] without an outline on one side its stations say why and make no check; the rest stands', () => {
    const report = checked({ archTop: at(40, 14) });
    expect(report.outlines.right).toEqual({ ok: false, reason: 'upper-edge-under-lower-edge' });
    expect(report.stations[0]).toMatchObject({
      share: 0.25,
      right: { ok: false, reason: 'upper-edge-under-lower-edge' },
      left: { ok: true },
      difference: undefined,
    });
    expect(report.checks.filter(({ id }) => id === 'thickness')).toEqual([]);
    expect(report.checks).toHaveLength(tradeCheckCount(0));
  });
  it('[hand] an outer corner below its wing is refused', () => {
    expect(
      tradeChecks(
        { right: { ...face, ...brow, outerCorner: at(50, -41) }, left: { ...face, ...brow } },
        choices,
      ),
    ).toEqual({ ok: false, reason: 'corner-not-above-wing' });
  });
});

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
