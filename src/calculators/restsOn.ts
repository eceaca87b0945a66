import type { FactId } from '#lib/catalogue.ts';
import type { CalculatorId } from './index.ts';

/** What every tool adds to a reading. */
const tools = [
  'pencil-half-width-mm',
  'caliper-half-width-mm',
  'thread-half-width-mm',
] as const satisfies readonly FactId[];

/** What a difference is judged real by, to begin with. */
const realDifference = [
  'example-error-mm',
  ...tools,
  'family-false-alarm',
] as const satisfies readonly FactId[];

/** What the model of skin says of light. */
const lightInSkin = [
  'veil-share',
  'surface-outside',
  'surface-inside',
  'skin-scattering-at-500-nm',
  'melanosome-at-500-nm',
  'melanosome-power',
  'skin-baseline',
  'blood-haemoglobin',
  'haemoglobin-molar-mass',
  'blood-saturation',
] as const satisfies readonly FactId[];

/** The model of skin with pigment in it. */
const pigmentInSkin = ['epidermis-mm', 'model-depth-mm', ...lightInSkin] as const satisfies readonly FactId[];

/**
 * The facts each calculator's result rests on: a test follows what each one reads. Apart from the calculators: pages print them, browsers need
 * not load them.
 */
export const restsOn: Readonly<Record<CalculatorId, readonly FactId[]>> = {
  'midline-and-sides': [
    'few-see-mm',
    'most-see-mm',
    'example-error-mm',
    'ten-comparisons',
    ...tools,
    'family-false-alarm',
    'biweight-constant',
    'scatter-floor-mm',
    'trusted-from-weight',
  ],
  'level-line': ['arches-apart-mm', 'thread-length-mm', ...realDifference, 'factor-95'],
  'front-and-tail': [
    'nostril-middle-share',
    'tail-inside-the-line',
    'tail-tip-in-the-band',
    'lengths-equal',
    ...realDifference,
  ],
  'outline-and-cover': [
    'thickness-equal',
    'lengths-equal',
    'tail-inside-the-line',
    'tail-tip-in-the-band',
    'front-above-an-anchor',
    'nostril-middle-share',
    ...realDifference,
  ],
  'cover-the-old-shape': [
    'cover-margin-factor',
    'margin-taper-mm',
    'leave-below-mm',
    'lower-raised-or-higher-lowered',
    'lighten-what-does-not-fit',
    ...realDifference,
  ],
  pose: [
    'turn-3-deg-tail-mm',
    'brow-straight-mm',
    'nod-none-tail-mm',
    'near-midface-taller',
    'selfie-nose-longer',
    'head-nod-drift-deg',
  ],
  'after-the-first-pass': ['swollen-chase-from-mm', 'add-or-stop', ...realDifference],
  'measuring-error': [
    'pairs-for-own-error',
    'repeat-factor',
    'factor-95',
    'family-false-alarm',
    'ten-comparisons',
    ...tools,
    't-of-three-readings',
    'chi-square-low-of-twenty',
  ],
  'two-readings': [...realDifference, 'map-at-rest', 'upright-to-draw'],
  'usual-difference': [
    'unequal-at-front-mm',
    'unequal-at-middle-mm',
    'unequal-at-tail-mm',
    'few-see-mm',
    'most-see-mm',
  ],
  'hair-and-bone': ['brow-against-rim-people', 'tail-falls-mm'],
  'arch-placement': [
    'arch-women-of-eye-width',
    'arch-models-of-eye-width',
    'iris-edge-women-of-eye-width',
    'iris-edge-models-of-eye-width',
    'arch-two-thirds',
    'arch-four-places-raters',
    'arch-near-outer-corner-people',
    'arch-rules-p-value',
    'iris-width-mm',
    'golden-share',
    'golden-share-from-tail',
  ],
  'strokes-and-dots': [
    'stroke-spread-mm',
    'dot-spread-mm',
    'lines-widen',
    'hair-stroke-needle-mm',
    'tattoo-needle-mm',
    'fine-detail-lost-years',
  ],
  'mix-by-drops': [...pigmentInSkin],
  'which-hue': [...pigmentInSkin],
  'find-a-recipe': ['cover-counts-below', ...pigmentInSkin],
  'why-it-healed-this-way': [
    'one-reading-doubt',
    'model-depth-mm',
    'losses-looked-at',
    'pigment-put-in-least',
    'pigment-put-in-mean',
    'pigment-put-in-most',
    'deposit-unchanged-days',
    'epidermis-mm',
    ...lightInSkin,
  ],
  'skin-reading': [
    'ita-very-light-above-deg',
    'ita-light-above-deg',
    'ita-intermediate-above-deg',
    'ita-tan-above-deg',
    'ita-dark-up-to-deg',
    'skin-reading-repeats',
    'one-reading-doubt',
    'touched-doubt-a',
    'leans-red-below-deg',
    'leans-yellow-from-deg',
    'read-skin-untouched',
    'camera-doubt',
    'grey-card-throws-back',
    'card-tint-most',
  ],
};
