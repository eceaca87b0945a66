import { drawNormalWithin, drawOne, drawWhole, type Draw } from '../quantities/seed.ts';
import type { Bones } from './bones.ts';
import { clamp } from './spot.ts';
import { defaultForm, type Form } from './form.ts';

/**
 * What a practice face looks like where nothing is measured. All spreads assumed; every feature is drawn on
 * its own.
 */
export function practiceForm(draw: Draw, bones: Bones, age: number): Form {
  const cheekMm = drawNormalWithin(draw, 67, 2.4, 62, 72);
  const grey = age > 0.65 ? 0.6 : 1;
  const form: Form = {
    ...defaultForm,
    lid: drawOne(draw, ['open', 'open', 'hooded', 'single', 'deep']),
    eyeOpening: drawNormalWithin(draw, 0.98, 0.08, 0.8, 1.12),
    eyeRoundness: drawNormalWithin(draw, 0, 0.5, -1, 1),
    lidPeak: drawNormalWithin(draw, 0, 0.5, -1, 1),
    irisTone: draw(),
    bridgeWidthMm: drawNormalWithin(draw, 15.8, 1.4, 13, 19),
    skullMm: cheekMm + drawNormalWithin(draw, 4.8, 1.2, 2, 7.5),
    cheekMm,
    jawMm: drawNormalWithin(draw, cheekMm * 0.815, 3.4, cheekMm * 0.73, cheekMm * 0.9),
    jawV: drawNormalWithin(draw, -75, 3, -82, -68),
    chinHalfWidthMm: drawNormalWithin(draw, 20, 4.2, 12, 28),
    hairlineV: drawNormalWithin(draw, 66, 4, 58, 74),
    mouthV: -bones.noseDropMm - drawNormalWithin(draw, 30, 1.8, 27, 34),
    mouthWidthMm: drawNormalWithin(draw, 50, 3, 43, 57),
    upperLipMm: drawNormalWithin(draw, 6.8 - 2 * age, 1.6, 3.4, 10),
    lowerLipMm: drawNormalWithin(draw, 9 - 1.6 * age, 1.7, 5.4, 12.4),
    browBone: draw(),
    age,
    beard: draw() < 0.25 ? 0.35 + 0.65 * draw() : 0,
    hair: drawOne(draw, ['bald', 'crop', 'short', 'tied', 'bob', 'long', 'curls', 'locs', 'scarf', 'wrap']),
    hairTone: age > 0.65 ? drawOne(draw, [0.05, 0.15, 0.35]) : drawOne(draw, [0.3, 0.55, 0.8, 0.95]),
    glasses: false,
    freckles: draw() < 0.15 ? drawWhole(draw, 30, 90) : 0,
    browHair: {
      count: Math.round(drawNormalWithin(draw, 235 * grey, 40, 110, 320)),
      gaps: clamp(draw() * 0.5, 0, 0.5),
      sparseTail: draw() < 0.2 ? 0.3 + 0.4 * draw() : 0,
    },
    ...(draw() < 0.08 && {
      scar: { side: drawOne(draw, ['right', 'left']), t: 0.45 + 0.35 * draw(), lean: 0.3 },
    }),
    ...(draw() < 0.08 && {
      vitiligo: [{ at: [-30 + 60 * draw(), 30 + 10 * draw()], radiusMm: 5 + 4 * draw() }],
    }),
    // No face has two equal eyes. Only the lids differ: every mark stays where it was.
    leftEye: {
      openingShare: drawNormalWithin(draw, 1, 0.035, 0.92, 1.08),
      peakShift: drawNormalWithin(draw, 0, 0.25, -0.5, 0.5),
    },
  };
  // A beard is drawn down to where a scarf would lie.
  return form.hair === 'scarf' ? { ...form, beard: 0 } : form;
}
