import { flatBrow, highBrow, lowBrow } from './browKinds.ts';
import type { PersonPlan } from './personPlan.ts';

/** The other twelve: older, or with a scar, a patch, a lean or a rolled head. */
export const olderPeople: readonly PersonPlan[] = [
  {
    bones: { pupilDistanceMm: 61, intercanthalMm: 31.2, eyeWidthMm: 29.5, noseWidthMm: 31, noseDropMm: 40, chinDropMm: 110 },
    form: { bridgeWidthMm: 14, skullMm: 69, cheekMm: 64, jawMm: 51, chinHalfWidthMm: 17, hair: 'long', hairTone: 0.05, lid: 'hooded', age: 0.85, irisTone: 0.2, upperLipMm: 4.6, lowerLipMm: 6.4, mouthV: -70 },
    browHair: { count: 150, gaps: 0.6, sparseTail: 0.6 }, brow: { front: 14, ...flatBrow, frontLowerV: 10.4, archTopV: 18.6, tailV: 12 }, skin: { l: 76, a: 9, b: 15 },
  },
  {
    bones: { pupilDistanceMm: 65, intercanthalMm: 37, eyeWidthMm: 29, noseWidthMm: 39, chinDropMm: 111 },
    form: { bridgeWidthMm: 17, skullMm: 74, cheekMm: 71, jawMm: 60, jawV: -73, chinHalfWidthMm: 22, hair: 'wrap', hairTone: 0.6, lid: 'single', eyeOpening: 0.9, age: 0.5, upperLipMm: 7.4, lowerLipMm: 9.6, mouthWidthMm: 52 },
    browHair: { count: 170, gaps: 0.4 }, brow: { front: 16.5, ...flatBrow }, skin: { l: 42, a: 11, b: 18 },
  },
  {
    bones: { pupilDistanceMm: 60, intercanthalMm: 32.8, eyeWidthMm: 28, noseWidthMm: 36.5, noseDropMm: 35.5, chinDropMm: 104 },
    form: { skullMm: 71, cheekMm: 68, jawMm: 58, jawV: -72, chinHalfWidthMm: 17, mouthV: -64, hair: 'curls', hairTone: 0.4, lid: 'deep', age: 0.35, upperLipMm: 6.6, mouthWidthMm: 47 },
    brow: { front: 14.6, ...highBrow, archTopV: 22 }, skin: { l: 60, a: 10, b: 19 },
  },
  {
    bones: { pupilDistanceMm: 70, intercanthalMm: 36, eyeWidthMm: 32.5, noseWidthMm: 38, noseDropMm: 41.5, chinDropMm: 122 },
    form: { bridgeWidthMm: 18, skullMm: 77, cheekMm: 72, jawMm: 63, jawV: -80, chinHalfWidthMm: 27, mouthV: -73, hair: 'bald', hairTone: 0.8, beard: 1, lid: 'deep', browBone: 1, age: 0.45, upperLipMm: 5.4, mouthWidthMm: 54 },
    browHair: { count: 300 }, brow: { front: 14, ...lowBrow, frontThicknessMm: 8.4 }, skin: { l: 54, a: 13, b: 18 },
  },
  {
    bones: { pupilDistanceMm: 61, intercanthalMm: 33, eyeWidthMm: 28.5, noseWidthMm: 33, chinDropMm: 107 },
    form: { skullMm: 70, cheekMm: 65, jawMm: 50, chinHalfWidthMm: 16, hair: 'bob', hairTone: 0.06, lid: 'hooded', age: 1, glasses: true, irisTone: 0.5, upperLipMm: 3.8, lowerLipMm: 5.6 },
    browHair: { count: 125, gaps: 0.8, sparseTail: 0.7 }, brow: { front: 14.6, ...flatBrow, frontLowerV: 9.6, archTopV: 17.8, tailV: 11.2 }, rightMoved: { outMm: 0.6, upMm: -0.9 }, skin: { l: 66, a: 6, b: 19 },
  },
  {
    bones: { pupilDistanceMm: 64, intercanthalMm: 33.5, eyeWidthMm: 30, noseWidthMm: 34.5, noseLeanMm: 4, chinShiftMm: 1.2 },
    form: { cheekMm: 66, jawMm: 54, hairlineV: 70, irisTone: 0.55, hair: 'tied', hairTone: 0.7, age: 0.3, eyeRoundness: -0.3 },
    brow: { front: 15 }, rightMoved: { outMm: -1.4, upMm: -0.4 }, skin: { l: 82, a: 5, b: 16 },
  },
  {
    bones: { pupilDistanceMm: 66, intercanthalMm: 35, eyeWidthMm: 30.5, noseWidthMm: 36, chinShiftMm: -0.8 },
    form: { skullMm: 74, cheekMm: 68, jawMm: 57, chinHalfWidthMm: 21, hairlineV: 62, hair: 'crop', hairTone: 0.25, irisTone: 0.1, upperLipMm: 6.6, scar: { side: 'left', t: 0.72, lean: 0.35 } },
    browHair: { count: 240 }, brow: { front: 14.5, ...lowBrow, archTopV: 18.8 }, skin: { l: 88, a: 4, b: 11 },
  },
  {
    bones: { pupilDistanceMm: 60, intercanthalMm: 34, eyeWidthMm: 27.5, noseWidthMm: 35, chinDropMm: 105 },
    form: { skullMm: 73, cheekMm: 70, jawMm: 57, jawV: -71, mouthV: -65, hair: 'scarf', hairTone: 0.3, lid: 'single', eyeOpening: 0.88, age: 0.6, lowerLipMm: 8, mouthWidthMm: 45 },
    brow: { front: 15.2, ...flatBrow }, skin: { l: 74, a: 6, b: 17 },
  },
  {
    bones: { pupilDistanceMm: 62, intercanthalMm: 31.8, eyeWidthMm: 30, noseWidthMm: 32, noseDropMm: 39.5 },
    form: { skullMm: 71, cheekMm: 65, jawMm: 52, chinHalfWidthMm: 18, mouthV: -70, hair: 'short', hairTone: 0.05, lid: 'deep', age: 0.7, upperLipMm: 4.6, lowerLipMm: 6.6 },
    browHair: { count: 170, patch: { t: 0.55, s: 0.5, radiusMm: 3.4 } }, brow: { front: 14.2, ...flatBrow }, skin: { l: 24, a: 8, b: 9 },
  },
  {
    bones: { pupilDistanceMm: 65, intercanthalMm: 38, eyeWidthMm: 28.5, outerCornerMm: 2, noseWidthMm: 44, chinDropMm: 110 },
    form: { bridgeWidthMm: 18, skullMm: 74, cheekMm: 70, jawMm: 56, chinHalfWidthMm: 18, hair: 'wrap', hairTone: 0.9, irisTone: 1, lid: 'hooded', age: 0.25, upperLipMm: 9, lowerLipMm: 11.6, mouthWidthMm: 54 },
    brow: { front: 17 }, skin: { l: 27, a: 8, b: 10 },
  },
  {
    bones: { pupilDistanceMm: 57.5, intercanthalMm: 31.2, eyeWidthMm: 27, noseWidthMm: 33.5, noseDropMm: 35, chinDropMm: 102 },
    form: { bridgeWidthMm: 14.5, skullMm: 69, cheekMm: 64, jawMm: 53, jawV: -70, chinHalfWidthMm: 18, mouthV: -63, hair: 'bob', hairTone: 0.45, freckles: 40, upperLipMm: 6.8, lowerLipMm: 9.4, mouthWidthMm: 44, eyeRoundness: 0.8 },
    brow: { front: 13.6 }, rollDeg: 3, skin: { l: 69, a: 13, b: 19 },
  },
  {
    bones: { pupilDistanceMm: 66, intercanthalMm: 34.5, eyeWidthMm: 31, noseWidthMm: 40, chinDropMm: 117 },
    form: { bridgeWidthMm: 18, skullMm: 73, cheekMm: 67, jawMm: 58, chinHalfWidthMm: 24, hair: 'curls', hairTone: 0.07, beard: 0.5, lid: 'hooded', age: 0.75, browBone: 0.6, upperLipMm: 7, lowerLipMm: 9, mouthWidthMm: 53 },
    browHair: { count: 210, gaps: 0.3 }, brow: { front: 14, ...lowBrow }, skin: { l: 36, a: 8, b: 17 },
  },
];
