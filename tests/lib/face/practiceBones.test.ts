import { describe, expect, it } from 'vitest';
import { practiceBones, practiceBrowPlan } from '#lib/face/practiceBones.ts';
import { practiceNorms } from '#lib/face/practiceNorms.ts';
import type { Draw } from '#lib/quantities/seed.ts';
import { correlation, draw0, meanOf, normalOf, sample, scripted, sdOf } from './draws.ts';

/**
 * Pupils 63 - 2.5 × 3.5 = 54.25, corners of the widest cohort 38.5 + 2 × 3.2 = 44.9 apart: 4.7 mm for half an
 * eye.
 */
const noRoom = [...normalOf(-2.5), 0, ...normalOf(2)];
/** Pupils 63 + 2.5 × 3.5 = 71.75, corners of the narrowest cohort 31.2 - 2 × 1.5 = 28.2 apart: 21.8 mm. */
const tooMuchRoom = [...normalOf(2.5), 0.99, ...normalOf(-2)];
const times = (count: number, values: readonly number[]): readonly number[] =>
  Array.from({ length: count }, () => values).flat();

describe('practice bones', () => {
  it('[hand] the mean of everything, corners of the first cohort', () => {
    const bones = practiceBones(draw0);
    expect(bones.pupilDistanceMm).toBe(63);
    expect(bones.intercanthalMm).toBe(38.5);
    expect(bones.eyeWidthMm).toBe(25.5); // 63 - 38.5 = 24.5 is narrower than any eye here
    expect(bones.outerCornerMm).toBe(1.6);
    expect(bones.noseWidthMm).toBeCloseTo(41.58, 9); // 1.08 × 38.5
    expect(bones.noseDropMm).toBe(38);
    expect(bones.chinDropMm).toBe(112);
    expect(bones.noseLeanMm).toBe(0);
    expect(bones.chinShiftMm).toBe(0);
  });

  it('[hand] an eye as wide as pupil distance less corner distance, and its own difference added', () => {
    // 63 - 31.2 = 31.8, and one spread of 0.8 more.
    expect(practiceBones(scripted(0, 0, 0.99, 0, 0, ...normalOf(1))).eyeWidthMm).toBeCloseTo(32.6, 9);
    expect(practiceBones(scripted(0, 0, 0.99, 0, 0, ...normalOf(-1))).eyeWidthMm).toBeCloseTo(31, 9);
  });

  it.each([
    ['too little', noRoom],
    ['too much', tooMuchRoom],
  ])('[hand] %s room for an eye: both distances are drawn again', (_, bad) => {
    // 63 and 38.5: zeros after the bad pairs.
    for (const tries of [1, 49]) {
      const { pupilDistanceMm, intercanthalMm } = practiceBones(scripted(...times(tries, bad)));
      expect([pupilDistanceMm, intercanthalMm]).toEqual([63, 38.5]);
    }
  });

  it('[hand] after fifty pairs without room: a plain pair', () => {
    const { pupilDistanceMm, intercanthalMm } = practiceBones(scripted(...times(50, noRoom)));
    expect([pupilDistanceMm, intercanthalMm]).toEqual([63, 33]);
  });

  it('[property] 4000 faces: every half eye has room for an iris, every measure keeps to its limits and comes near both', () => {
    const all = sample(4000, practiceBones);
    for (const { pupilDistanceMm, intercanthalMm } of all) {
      expect(pupilDistanceMm - intercanthalMm).toBeGreaterThanOrEqual(19.2);
      expect(pupilDistanceMm - intercanthalMm).toBeLessThanOrEqual(38);
    }
    for (const [key, lo, hi, near] of [
      ['eyeWidthMm', 25.5, 33.5, 0],
      ['outerCornerMm', -0.5, 3.6, 0.1],
      ['noseWidthMm', 28, 48, 1.5],
      ['noseDropMm', 34, 42.5, 0.3],
      ['chinDropMm', 102, 122, 0.6],
    ] as const) {
      const values = all.map((bones) => bones[key]);
      expect(Math.min(...values)).toBeGreaterThanOrEqual(lo);
      expect(Math.max(...values)).toBeLessThanOrEqual(hi);
      expect(Math.min(...values)).toBeLessThanOrEqual(lo + near);
      expect(Math.max(...values)).toBeGreaterThanOrEqual(hi - near);
    }
  });

  it('[property] wide-set eyes are wide eyes, wide corners go with a wide nose', () => {
    const all = sample(2000, practiceBones);
    const apart = all.map((bones) => bones.pupilDistanceMm - bones.intercanthalMm);
    expect(
      correlation(
        apart,
        all.map((bones) => bones.eyeWidthMm),
      ),
    ).toBeGreaterThan(0.8);
    expect(
      correlation(
        all.map((bones) => bones.intercanthalMm),
        all.map((bones) => bones.noseWidthMm),
      ),
    ).toBeGreaterThan(0.6);
    expect(
      Math.abs(
        correlation(
          all.map((bones) => bones.noseDropMm),
          all.map((bones) => bones.chinDropMm),
        ),
      ),
    ).toBeLessThan(0.09);
  });
});

describe('a practice brow', () => {
  it('[hand] the mean brow of a young face', () => {
    const plan = practiceBrowPlan(draw0, 0);
    expect(plan.front).toBe(14); // half of a gap of 28
    expect(plan.frontThicknessMm).toBe(7.3);
    expect(plan.frontLowerV).toBeCloseTo(8.9, 9); // upper margin 16.2
    expect(plan.frontSlantMm).toBe(0.6);
    expect(plan.archShare).toBe(0.62);
    expect(plan.archTopV).toBe(20.6);
    expect(plan.archThicknessMm).toBe(6.5);
    expect(plan.tailV).toBeCloseTo(11.9, 9); // 3 above the lower front mark
    expect(plan.tailInsideMm).toBe(1);
  });

  it('[hand] the mean brow of an old face: the tail stays 1.2 below the lower arch mark', () => {
    const plan = practiceBrowPlan(draw0, 1);
    expect(plan.frontLowerV).toBeCloseTo(11.3, 9); // upper margin 18.6
    expect(plan.archTopV).toBeCloseTo(21.5, 9);
    expect(plan.tailV).toBeCloseTo(13.8, 9); // 21.5 - 6.5 - 1.2, lower than 11.3 + 3
  });

  it('[table] with age the upper margin rises at the front, hardly at the arch', () => {
    // Matros 2009, 20 to 30 against 50 to 60 years: 19.1 - 15.7 = 3.4 mm at the inner corner, 22.4 - 21.3 =
    // 1.1 mm over the outer corner.
    const top = (age: number): readonly [number, number] => {
      const plans = sample(2000, (draw) => practiceBrowPlan(draw, age));
      // Where the lower front mark rests on its lower limit the margin is not the one drawn: left out.
      const free = plans.filter(({ frontLowerV }) => frontLowerV > 7.2);
      return [
        meanOf(free.map((p) => p.frontLowerV + p.frontThicknessMm)),
        meanOf(plans.map((p) => p.archTopV)),
      ];
    };
    const [young, old] = [top(0), top(1)];
    expect(old[0] - young[0]).toBeGreaterThan(1.5);
    expect(old[0] - young[0]).toBeLessThan(3.4);
    expect(old[1] - young[1]).toBeGreaterThan(0.5);
    expect(old[1] - young[1]).toBeLessThan(1.1 + 0.1);
    // Means of the two groups hold the published margins within 2 mm, young and old.
    expect(Math.abs(young[0] - 15.7)).toBeLessThan(2);
    expect(Math.abs(old[0] - 19.1)).toBeLessThan(2);
    expect(Math.abs(young[1] - 21.3)).toBeLessThan(2);
    expect(Math.abs(old[1] - 22.4)).toBeLessThan(2);
  });

  /**
   * What both thicknesses share, then front, arch, lift, the arch's own lift: all in spreads from the mean.
   */
  const drawnAs = (shared: number, front: number, arch: number, lift: number, archLift: number): Draw =>
    scripted(...[shared, front, arch, lift, archLift].flatMap(normalOf));

  it('[hand] a lifted brow is lifted at front and arch alike; the arch has a lift of its own', () => {
    const [plain, lifted, arched] = [
      practiceBrowPlan(draw0, 0),
      practiceBrowPlan(drawnAs(0, 0, 0, 1, 0), 0),
      practiceBrowPlan(drawnAs(0, 0, 0, 0, 1), 0),
    ];
    expect(lifted.frontLowerV - plain.frontLowerV).toBeCloseTo(0.9, 9);
    expect(lifted.archTopV - plain.archTopV).toBeCloseTo(0.9, 9);
    expect(arched.frontLowerV).toBe(plain.frontLowerV);
    expect(arched.archTopV - plain.archTopV).toBeCloseTo(0.7, 9);
  });

  it('[hand] a thickness is half shared, half its own: each spread √½ × 1.2 mm', () => {
    const shared = practiceBrowPlan(drawnAs(1, 0, 0, 0, 0), 0);
    expect(shared.frontThicknessMm).toBeCloseTo(7.3 + 0.848528, 6);
    expect(shared.archThicknessMm).toBeCloseTo(6.5 + 0.848528, 6);
    const own = practiceBrowPlan(drawnAs(0, 1, -1, 0, 0), 0);
    expect(own.frontThicknessMm).toBeCloseTo(7.3 + 0.848528, 6);
    expect(own.archThicknessMm).toBeCloseTo(6.5 - 0.848528, 6);
  });

  it('[hand] too thick or too thin is drawn again, fifty times at most', () => {
    // 5 own spreads are 4.2 mm: 7.3 ± 4.2 lies outside 4.2 to 10.5.
    for (const z of [5, -5]) {
      const thickness = (tries: number): number => {
        const own = Array.from({ length: tries }, () => normalOf(z)).flat();
        return practiceBrowPlan(scripted(...normalOf(0), ...own, ...normalOf(1)), 0).frontThicknessMm;
      };
      expect(thickness(1)).toBeCloseTo(8.148528, 6);
      expect(thickness(49)).toBeCloseTo(8.148528, 6);
      expect(thickness(50)).toBe(7.3);
    }
  });

  it('[property] thicknesses keep their own mean and spread and go together, correlation one half', () => {
    const plans = sample(4000, (draw) => practiceBrowPlan(draw, 0.4));
    const [front, arch] = [plans.map((p) => p.frontThicknessMm), plans.map((p) => p.archThicknessMm)];
    expect(Math.abs(meanOf(front) - 7.3)).toBeLessThan(0.08);
    expect(Math.abs(meanOf(arch) - 6.5)).toBeLessThan(0.08);
    for (const values of [front, arch]) expect(Math.abs(sdOf(values) - 1.2)).toBeLessThan(0.06);
    expect(Math.abs(correlation(front, arch) - 0.5)).toBeLessThan(0.06);
    for (const [values, { lo, hi }] of [
      [front, practiceNorms.frontThicknessMm],
      [arch, practiceNorms.archThicknessMm],
    ] as const) {
      expect(Math.min(...values)).toBeGreaterThanOrEqual(lo);
      expect(Math.max(...values)).toBeLessThanOrEqual(hi);
    }
  });

  it('[property] 4000 brows keep to their limits and come near both ends', () => {
    const plans = sample(4000, (draw, i) => practiceBrowPlan(draw, (i % 11) / 10));
    for (const [key, lo, hi] of [
      ['frontSlantMm', -0.4, 1.4],
      ['archShare', 0.48, 0.76],
      ['tailInsideMm', -2.5, 5],
    ] as const) {
      const values = plans.map((plan) => plan[key]);
      const tenth = (hi - lo) / 10;
      expect(Math.min(...values)).toBeGreaterThanOrEqual(lo);
      expect(Math.max(...values)).toBeLessThanOrEqual(hi);
      expect(Math.min(...values)).toBeLessThan(lo + tenth);
      expect(Math.max(...values)).toBeGreaterThan(hi - tenth);
    }
    const lower = plans.map((plan) => plan.frontLowerV);
    expect(Math.min(...lower)).toBe(7.2); // rests on it when thick and low
    expect(lower.filter((v) => v > 7.2).length).toBeGreaterThan(3000);
    for (const { tailV, archTopV, archThicknessMm, frontLowerV } of plans) {
      expect(tailV).toBeLessThanOrEqual(archTopV - archThicknessMm - 1.2);
      expect(tailV).toBeLessThanOrEqual(frontLowerV + 6);
    }
    const tailUp = plans.map((plan) => plan.tailV - plan.frontLowerV);
    expect(meanOf(tailUp)).toBeGreaterThan(0);
  });
});
