import { describe, expect, it } from 'vitest';
import { defaultBones } from '#lib/face/bones.ts';
import { plannedBrow, tailLimitMm, type BrowPlan } from '#lib/face/browPlan.ts';

/** Wing at (20, -40), outer eye corner at 15 + 30 = 45 out, 10 up: the line goes 25 mm out over 50 mm up. */
const bones = {
  ...defaultBones,
  noseWidthMm: 40,
  noseDropMm: 40,
  intercanthalMm: 30,
  eyeWidthMm: 30,
  outerCornerMm: 10,
};
const plan: BrowPlan = {
  front: 'inner-corner',
  frontLowerV: 11,
  frontThicknessMm: 6,
  frontSlantMm: 1,
  archShare: 0.6,
  archTopV: 21,
  archThicknessMm: 5,
  tailV: 14,
  tailInsideMm: 2,
};

describe('a planned brow', () => {
  it('[hand] the line nose wing – outer corner: 20 at the wing, 45 at the corner, 47 at 14 mm up', () => {
    expect(tailLimitMm(bones, -40)).toBeCloseTo(20, 9);
    expect(tailLimitMm(bones, 10)).toBeCloseTo(45, 9);
    expect(tailLimitMm(bones, 14)).toBeCloseTo(47, 9);
  });

  it.each([
    ['inner-corner', 15],
    ['nose-wing', 20],
    [13, 13],
    [0, 0],
  ] as const)('[hand] front %s stands %d mm out', (front, outMm) => {
    const brow = plannedBrow(bones, { ...plan, front });
    expect(brow.frontLower).toEqual([outMm, 11]);
    expect(brow.frontTop).toEqual([outMm + 1, 17]); // slant 1 out, thickness 6 up
    expect(brow.tail[0]).toBeCloseTo(45, 9); // 2 inside the line at 47
    expect(brow.archTop[0]).toBeCloseTo(outMm + 0.6 * (45 - outMm), 9);
  });

  it('[hand] arch at 0.6 of the way from 15 to 45, 5 mm thick; lower arch mark nearer the midline', () => {
    const brow = plannedBrow(bones, plan);
    expect(brow.archTop[0]).toBeCloseTo(33, 9);
    expect(brow.archTop[1]).toBe(21);
    expect(brow.archLower[1]).toBe(16);
    expect(brow.archLower[0]).toBeLessThan(brow.archTop[0]);
    expect(brow.archTop[0] - brow.archLower[0]).toBeLessThan(2);
    expect(brow.tail[1]).toBe(14);
  });
});
