import { flatBrow, highBrow, lowBrow } from './browKinds.ts';
import type { PersonPlan } from './personPlan.ts';

/** The first twelve: no or few lines of age. */
export const youngerPeople: readonly PersonPlan[] = [
  { bones: {}, form: { hair: 'tied', hairTone: 0.6 }, brow: {}, skin: { l: 72, a: 10, b: 18 } },
  {
    bones: { pupilDistanceMm: 66, intercanthalMm: 36.4, eyeWidthMm: 30, noseWidthMm: 40, noseDropMm: 36.5 },
    form: { bridgeWidthMm: 17, skullMm: 75, cheekMm: 69, jawMm: 56, chinHalfWidthMm: 20, upperLipMm: 8.6, lowerLipMm: 11, mouthWidthMm: 53, eyeRoundness: 0.4, hair: 'curls', hairTone: 0.9, irisTone: 1 },
    browHair: { count: 250 }, brow: { front: 15.5, ...flatBrow, archTopV: 20.4 }, skin: { l: 34, a: 11, b: 15 },
  },
  {
    bones: { pupilDistanceMm: 62, intercanthalMm: 35.5, eyeWidthMm: 27.5, outerCornerMm: 2.8, noseWidthMm: 36, chinDropMm: 110 },
    form: { eyeOpening: 0.84, eyeRoundness: -0.5, bridgeWidthMm: 16, cheekMm: 69, jawMm: 55, chinHalfWidthMm: 17, lid: 'single', hair: 'bob', hairTone: 0.95, lowerLipMm: 8, mouthWidthMm: 46, browBone: 0.1 },
    brow: { front: 15.5, ...flatBrow }, skin: { l: 68, a: 7, b: 20 },
  },
  {
    bones: { pupilDistanceMm: 67, intercanthalMm: 33, noseWidthMm: 37, noseDropMm: 40, chinDropMm: 119 },
    form: { skullMm: 76, cheekMm: 69, jawMm: 60, jawV: -79, chinHalfWidthMm: 25, hairlineV: 71, hair: 'crop', hairTone: 0.6, beard: 0.9, lid: 'deep', irisTone: 0.3, browBone: 0.9, upperLipMm: 5.4, mouthWidthMm: 52, mouthV: -71, lidPeak: -0.6 },
    browHair: { count: 290 }, brow: { front: 13.5, ...lowBrow }, skin: { l: 63, a: 12, b: 17 },
  },
  {
    bones: { pupilDistanceMm: 64, intercanthalMm: 34.2, eyeWidthMm: 30, outerCornerMm: 2.2, noseWidthMm: 38.5, chinDropMm: 108 },
    form: { cheekMm: 66, jawMm: 52, chinHalfWidthMm: 17, hair: 'scarf', hairTone: 0.8, upperLipMm: 7.8, lowerLipMm: 9.6, eyeRoundness: 0.7 },
    brow: { front: 15 }, skin: { l: 52, a: 11, b: 20 },
  },
  {
    bones: { pupilDistanceMm: 63, intercanthalMm: 33.4, eyeWidthMm: 30, noseWidthMm: 34 },
    form: { bridgeWidthMm: 15.5, skullMm: 74, cheekMm: 68, jawMm: 55, chinHalfWidthMm: 22, hair: 'bald', upperLipMm: 7, lowerLipMm: 9, eyeRoundness: 0.3 },
    browHair: { count: 80, gaps: 0.9, sparseTail: 0.8 }, brow: { front: 15.5 }, skin: { l: 78, a: 8, b: 13 },
  },
  {
    bones: { pupilDistanceMm: 68, intercanthalMm: 38.5, eyeWidthMm: 30, noseWidthMm: 42.5, noseDropMm: 37, chinDropMm: 115 },
    form: { bridgeWidthMm: 18.5, skullMm: 76, cheekMm: 71, jawMm: 59, chinHalfWidthMm: 24, hair: 'locs', hairTone: 0.95, irisTone: 1, lid: 'hooded', beard: 0.4, upperLipMm: 8.8, lowerLipMm: 11.4, mouthWidthMm: 55 },
    browHair: { count: 270 }, brow: { front: 16, ...lowBrow, frontLowerV: 9.4 }, skin: { l: 30, a: 9, b: 11 },
  },
  {
    bones: { pupilDistanceMm: 59, intercanthalMm: 31.4, eyeWidthMm: 28.5, noseWidthMm: 30, noseDropMm: 36, chinDropMm: 108 },
    form: { bridgeWidthMm: 13.5, skullMm: 69, cheekMm: 62, jawMm: 47, chinHalfWidthMm: 15, hairlineV: 60, hair: 'tied', hairTone: 0.3, freckles: 90, irisTone: 0.15, eyeOpening: 1.06, eyeRoundness: 0.9, upperLipMm: 5.8, mouthV: -66 },
    browHair: { count: 180, gaps: 0.4 }, brow: { front: 13.2, ...highBrow }, skin: { l: 92, a: 2, b: 8 },
  },
  {
    bones: { pupilDistanceMm: 65, intercanthalMm: 32.3, eyeWidthMm: 31.5, outerCornerMm: 0.4, noseWidthMm: 35.5, noseDropMm: 40.5, chinDropMm: 117 },
    form: { bridgeWidthMm: 17, skullMm: 72, cheekMm: 66, jawMm: 56, chinHalfWidthMm: 23, hair: 'short', hairTone: 0.5, lid: 'hooded', browBone: 0.7, irisTone: 0.4, upperLipMm: 5, lowerLipMm: 7.6, mouthV: -71, eyeRoundness: -0.7 },
    browHair: { count: 270, cowlick: { t: 0.08, radiusMm: 7, turnDeg: 38 } }, brow: { front: 12.8, ...lowBrow }, skin: { l: 58, a: 16, b: 15 },
  },
  {
    bones: { pupilDistanceMm: 64, intercanthalMm: 34, eyeWidthMm: 30, outerCornerMm: 2.6, noseWidthMm: 41, chinDropMm: 114 },
    form: { bridgeWidthMm: 17.5, skullMm: 73, cheekMm: 67, jawMm: 53, chinHalfWidthMm: 18, hair: 'long', hairTone: 0.95, upperLipMm: 8, lowerLipMm: 10.4, mouthWidthMm: 52, lidPeak: 0.8 },
    brow: { front: 14.4, archTopV: 21.6 }, rightMoved: { outMm: 0, upMm: -1.6 }, skin: { l: 46, a: 14, b: 20 },
  },
  {
    bones: { pupilDistanceMm: 63, intercanthalMm: 35, eyeWidthMm: 28.5, outerCornerMm: 2.4, noseWidthMm: 37.5, chinDropMm: 115 },
    form: { eyeOpening: 0.82, eyeRoundness: -0.8, bridgeWidthMm: 16, skullMm: 74, cheekMm: 70, jawMm: 60, chinHalfWidthMm: 23, hair: 'short', hairTone: 0.95, lid: 'single', upperLipMm: 6.4, lowerLipMm: 8.4 },
    browHair: { count: 250 }, brow: { front: 14, ...lowBrow, frontLowerV: 10, archTopV: 18.4 }, skin: { l: 71, a: 4, b: 20 },
  },
  {
    bones: { pupilDistanceMm: 62, intercanthalMm: 32, eyeWidthMm: 29.5, noseWidthMm: 39.5, chinDropMm: 109 },
    form: {
      bridgeWidthMm: 15.5, skullMm: 71, cheekMm: 65, jawMm: 49, chinHalfWidthMm: 15, hair: 'locs', hairTone: 0.85, upperLipMm: 9, lowerLipMm: 11,
      vitiligo: [{ at: [30, 14], radiusMm: 9 }, { at: [-24, -62], radiusMm: 10 }, { at: [8, 36], radiusMm: 6 }],
    },
    brow: { front: 14.5 }, skin: { l: 38, a: 12, b: 17 },
  },
];
