import { drawNormal, drawNormalWithin, type Draw } from '../quantities/seed.ts';
import type { Bones } from './bones.ts';
import type { BrowPlan } from './browPlan.ts';
import { clamp } from './spot.ts';
import { drawIntercanthalMm, drawNorm, practiceNorms, type Norm } from './practiceNorms.ts';

/** Bones of a symmetric practice face. Measures without a norm are spreads assumed for the drawing. */
export function practiceBones(draw: Draw): Bones {
  const { pupilDistanceMm, intercanthalMm } = eyeSpacing(draw);
  return {
    pupilDistanceMm,
    intercanthalMm,
    eyeWidthMm: clamp(
      pupilDistanceMm - intercanthalMm + drawNormalWithin(draw, 0, 0.8, -1.5, 1.5),
      25.5,
      33.5,
    ),
    outerCornerMm: drawNormalWithin(draw, 1.6, 1, -0.5, 3.6),
    noseWidthMm: drawNormalWithin(draw, intercanthalMm * 1.08, 2.6, 28, 48),
    noseDropMm: drawNormalWithin(draw, 38, 2, 34, 42.5),
    noseLeanMm: 0,
    chinDropMm: drawNormalWithin(draw, 112, 4, 102, 122),
    chinShiftMm: 0,
  };
}

/**
 * Drawn again until an iris has room between the corners: the two measures are independent in the published
 * tables, not in an eye.
 */
function eyeSpacing(draw: Draw): Readonly<{ pupilDistanceMm: number; intercanthalMm: number }> {
  for (let tries = 0; tries < 50; tries++) {
    const pupilDistanceMm = drawNorm(draw, practiceNorms.pupilDistanceMm);
    const intercanthalMm = drawIntercanthalMm(draw);
    const innerHalfMm = (pupilDistanceMm - intercanthalMm) / 2;
    if (innerHalfMm >= 9.6 && innerHalfMm <= 19) return { pupilDistanceMm, intercanthalMm };
  }
  return { pupilDistanceMm: 63, intercanthalMm: 33 };
}

/**
 * A brow for these bones. Upper margin above the inner-corner plane rises with age at the front, hardly at
 * the arch: 15.7 mm at the inner corner at 20 to 30 years, 19.1 at 50 to 60; 21.3 and 22.4 over the outer
 * corner (Matros, Garcia & Yaremchuk 2009; the spreads are assumed).
 */
export function practiceBrowPlan(draw: Draw, age: number): BrowPlan {
  const shared = drawNormal(draw);
  const frontThicknessMm = thickness(draw, practiceNorms.frontThicknessMm, shared);
  const archThicknessMm = thickness(draw, practiceNorms.archThicknessMm, shared);
  const liftMm = drawNormalWithin(draw, 0, 0.9, -1.5, 2.2);
  const frontTopV = 16.2 + 2.4 * age + liftMm;
  const archTopV = 20.6 + 0.9 * age + liftMm + drawNormalWithin(draw, 0, 0.7, -1.4, 1.4);
  const frontLowerV = Math.max(7.2, frontTopV - frontThicknessMm);
  return {
    front: drawNorm(draw, practiceNorms.frontGapMm) / 2,
    frontLowerV,
    frontThicknessMm,
    frontSlantMm: drawNormalWithin(draw, 0.6, 0.4, -0.4, 1.4),
    archShare: drawNorm(draw, practiceNorms.archShare),
    archTopV,
    archThicknessMm,
    tailV: Math.min(archTopV - archThicknessMm - 1.2, frontLowerV + drawNormalWithin(draw, 3, 1.2, 0.4, 6)),
    tailInsideMm: drawNormalWithin(draw, 1, 1.6, -2.5, 5),
  };
}

/** Two thicknesses of one brow go together (assumed correlation 0.5), each still with its own norm. */
function thickness(draw: Draw, norm: Norm, shared: number): number {
  for (let tries = 0; tries < 50; tries++) {
    const value = norm.mean + norm.sd * (shared * Math.SQRT1_2 + drawNormal(draw) * Math.SQRT1_2);
    if (value >= norm.lo && value <= norm.hi) return value;
  }
  return norm.mean;
}
