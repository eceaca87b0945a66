import { describe, expect, it } from 'vitest';
import { levelFace } from '#lib/face/levelFace.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import { faceFrame } from '#lib/mapping/marks/faceFrame.ts';
import { browMarks, facePairs, faceSingles, type MarkSet } from '#lib/mapping/marks/markSet.ts';
import { mirrorMarksOf } from '#lib/mapping/marks/mirrorMarks.ts';
import { heightDifferenceShare, outwardDifferenceShare } from '#lib/mapping/placing/frameShare.ts';
import { limitVerdict } from '#lib/mapping/placing/limitVerdict.ts';
import {
  placeFrontAndTail,
  placingComparisons,
  type Placing,
  type PlacingChoices,
} from '#lib/mapping/placing/placeFrontAndTail.ts';
import { placingMarkNames, placingMarksOf, type PlacingMarks } from '#lib/mapping/placing/placingMarks.ts';
import { fitRobustMidline } from '#lib/mapping/midline/robustMidline.ts';
import type { Interval } from '#lib/quantities/interval.ts';
import { at, sides } from './marks.ts';

const choices: PlacingChoices = {
  anchor: 'inner-corner',
  ownMm: 13,
  edge: 'frontLower',
  nostrilShare: 0.6,
  readingMm: 0.3,
  k: 2,
};

function placed(marks: PlacingMarks, more: Partial<PlacingChoices> = {}): Placing {
  const placing = placeFrontAndTail(marks, { ...choices, ...more });
  if (!placing.ok) throw new Error(placing.reason);
  return placing;
}

const wide = sides(
  { noseWing: at(18, -40), frontLower: at(15.4, 10) },
  { noseWing: at(22, -40), frontLower: at(17, 10), frontTop: at(17.6, 17) },
);

describe('placing the front', () => {
  it.each([
    ['nose-wing', 20],
    ['inner-corner', 16],
    ['nostril-middle', 12],
    ['own', 13],
  ] as const)('[hand] by %s both fronts start %d mm from the midline', (anchor, chosenMm) => {
    const { chosenMm: chosen, fronts } = placed(wide, { anchor });
    expect(chosen).toBeCloseTo(chosenMm, 12);
    expect(fronts.right.nowMm + fronts.right.moveMm).toBeCloseTo(chosenMm, 12);
    expect(fronts.left.nowMm + fronts.left.moveMm).toBeCloseTo(chosenMm, 12);
  });
  it('[hand] anchors lie 8 mm apart (12 to 20); the fronts 1.6 mm, at their upper marks 1.6 too', () => {
    const lower = placed(wide);
    expect(lower.betweenMm).toBeCloseTo(8, 12);
    expect(lower.fronts).toEqual({
      right: { nowMm: 15.4, moveMm: expect.closeTo(0.6, 9) },
      left: { nowMm: 17, moveMm: expect.closeTo(-1, 9) },
    });
    expect(lower.frontsApart.value).toBeCloseTo(1.6, 12);
    const upper = placed(wide, { edge: 'frontTop' });
    expect(upper.fronts.right.nowMm).toBe(16);
    expect(upper.frontsApart.value).toBeCloseTo(1.6, 12);
  });
});

describe('placing the tail', () => {
  const long = sides({ tail: at(61, 8.8) }, {});
  it('[hand] a tail at (61, 8.8): line at 56.6 there, 4.4 beyond level, 3.52 the shortest way, 1.2 below the front', () => {
    const { tails } = placed(long);
    expect(tails.right.limitMm).toBeCloseTo(56.6, 9);
    expect(tails.right.insideLevelMm).toBeCloseTo(-4.4, 9);
    expect(tails.right.inside.value).toBeCloseTo(-3.52, 9);
    expect(tails.right.overLower.value).toBeCloseTo(-1.2, 9);
    expect(tails.right.underTop.value).toBeCloseTo(8.2, 9);
    expect(tails.left.inside.value).toBeCloseTo(2.4, 9);
  });
  it('[hand] left minus right: 3.2 higher, 5 mm shorter', () => {
    const { tailsUp, lengthsApart, lengths } = placed(long);
    expect(tailsUp.value).toBeCloseTo(3.2, 9);
    expect(lengthsApart.value).toBeCloseTo(-5, 9);
    expect(lengths.right.level).toBe(46);
    expect(lengths.left.level).toBe(41);
  });
  it('[hand] a leaning nose: the shared line stays, the own lines part by the lean’s share', () => {
    // At 12 up the wing counts −0.3: the right wing 2 nearer moves its own line 0.6 out, the left one 0.6 in.
    const { tails } = placed(wide);
    expect(tails.right.insideLevelMm).toBeCloseTo(3, 9);
    expect(tails.right.insideOwnLevelMm).toBeCloseTo(3.6, 9);
    expect(tails.left.insideOwnLevelMm).toBeCloseTo(2.4, 9);
  });
  it('[hand] half-widths by hand: lengths 2·2·0.3; tails 2·0.3·√(2 + (0.0071·112)²); fronts 2·0.3·√(2 + 4·0.389²)', () => {
    const { lengthsApart, tailsUp, frontsApart, tails } = placed(sides());
    expect(lengthsApart.hi).toBeCloseTo(1.2, 9);
    expect(tailsUp.hi).toBeCloseTo(0.6 * Math.sqrt(2 + 0.7952 ** 2), 6);
    expect(frontsApart.hi).toBeCloseTo(0.6 * Math.sqrt(2 + 4 * 0.151321), 6);
    expect(tails.right.overLower.hi - 2).toBeCloseTo(0.6 * Math.sqrt(2 + (0.0071 * 41) ** 2), 6);
    expect(tails.right.underTop.hi - 5).toBeCloseTo(0.6 * Math.sqrt(2 + (0.0071 * 40) ** 2), 6);
    // along 1.264; the line's direction is 0.6 out, 0.8 up.
    const share = Math.sqrt(
      1 + (0.264 ** 2 + 1.264 ** 2) / 2 + (0.8 * 0.389) ** 2 + (0.6 * 0.0071 * 56) ** 2,
    );
    expect(tails.right.inside.hi - 2.4).toBeCloseTo(0.6 * share, 6);
  });
  it.each(['right', 'left'] as const)('[hand] a %s outer corner below its own wing is refused', (side) => {
    const low = { outerCorner: at(50, -44), noseWing: at(20, -40) };
    const marks = side === 'right' ? sides(low, {}) : sides({}, low);
    expect(placeFrontAndTail(marks, choices)).toEqual({ ok: false, reason: 'corner-not-above-wing' });
  });
  it('[hand] nine differences are shown together', () => {
    const { frontsApart, tailsUp, lengthsApart, tails } = placed(sides());
    const perSide = [tails.right, tails.left].flatMap(({ inside, overLower, underTop }) => [
      inside,
      overLower,
      underTop,
    ]);
    expect([frontsApart, tailsUp, lengthsApart, ...perSide]).toHaveLength(placingComparisons);
  });
});

describe('verdicts', () => {
  it.each([
    [0.1, 2, 'keeps'],
    [-2, -0.1, 'breaks'],
    [-0.1, 2, 'too-near'],
    [0, 2, 'too-near'],
    [-2, 0, 'too-near'],
  ] as const)('[hand] %d to %d: %s', (lo, hi, verdict) => {
    expect(limitVerdict({ lo, hi })).toBe(verdict);
  });
});

/** The whole way from marks through the midline, with one coordinate of one mark moved. */
function through(set: MarkSet): Placing {
  const fit = fitRobustMidline(mirrorMarksOf(set));
  if (!fit.ok) throw new Error(fit.reason);
  return placed(placingMarksOf(set, faceFrame(set, fit.line, 'midline')));
}

function movedSets(set: MarkSet, by: number): readonly MarkSet[] {
  const axes = [
    [by, 0],
    [0, by],
  ] as const;
  const sidesOf = ['right', 'left'] as const;
  return axes.flatMap(([x, y]) => {
    const shift = ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm: xMm + x, yMm: yMm + y });
    return [
      ...facePairs.flatMap((name) =>
        sidesOf.map((side) => ({
          ...set,
          pairs: { ...set.pairs, [name]: { ...set.pairs[name], [side]: shift(set.pairs[name][side]) } },
        })),
      ),
      ...faceSingles.map((name) => ({
        ...set,
        singles: { ...set.singles, [name]: shift(set.singles[name]) },
      })),
      ...browMarks.flatMap((name) =>
        sidesOf.map((side) => ({
          ...set,
          brows: { ...set.brows, [name]: { ...set.brows[name], [side]: shift(set.brows[name][side]) } },
        })),
      ),
    ];
  });
}

/** Root sum of squares of the slopes to every coordinate: the standard uncertainty for each mm of a mark. */
function shareBySlopes(set: MarkSet, read: (placing: Placing) => Interval): number {
  const step = 1e-4;
  const up = movedSets(set, step).map((moved) => read(through(moved)).value);
  const down = movedSets(set, -step).map((moved) => read(through(moved)).value);
  return Math.sqrt(up.reduce((sum, value, i) => sum + ((value - (down[i] ?? 0)) / (2 * step)) ** 2, 0));
}

describe('the intervals hold the midline', () => {
  const faces = [levelFace.markSet, ...[3, 14, 15, 92, 65].map((seed) => practiceFace(seed, 1).markSet)];
  it.each([
    ['fronts apart', (p: Placing) => p.frontsApart, 0.03],
    ['tails level', (p: Placing) => p.tailsUp, 0.03],
    ['lengths', (p: Placing) => p.lengthsApart, 0.005],
    ['right tail over the lower edge', (p: Placing) => p.tails.right.overLower, 0.01],
    ['left tail under the top', (p: Placing) => p.tails.left.underTop, 0.01],
    ['right tail inside the line', (p: Placing) => p.tails.right.inside, 0.05],
    ['left tail inside the line', (p: Placing) => p.tails.left.inside, 0.05],
  ] as const)(
    '[property] %s: as by moving every mark of a face and fitting its midline again',
    (_, read, within) => {
      for (const set of faces) {
        const ours = read(through(set)).standardUncertainty / choices.readingMm;
        expect(Math.abs(ours / shareBySlopes(set, read) - 1)).toBeLessThan(within);
      }
    },
  );
  it('[hand] shares: 1.614 for two distances, 1.633 for two heights 115 mm apart', () => {
    expect(outwardDifferenceShare()).toBeCloseTo(1.614, 3);
    expect(heightDifferenceShare(115)).toBeCloseTo(1.6328, 3);
    expect(heightDifferenceShare(0)).toBeCloseTo(Math.SQRT2, 12);
  });
  it('[hand] a mark set in its frame: the level face’s marks are its frame’s', () => {
    const marks = placingMarksOf(levelFace.markSet, {
      midline: { normal: { x: 1, y: 0 }, offsetMm: 0 },
      level: { x: 1, y: 0 },
      pupilLevelMm: 0,
    });
    const { pairs, brows } = levelFace.markSet;
    for (const name of placingMarkNames) {
      const { right, left } =
        name === 'noseWing' || name === 'innerCorner' || name === 'outerCorner' ? pairs[name] : brows[name];
      expect(marks.right[name]).toEqual(at(-right.xMm, right.yMm));
      expect(marks.left[name]).toEqual(at(left.xMm, left.yMm));
    }
  });
});
