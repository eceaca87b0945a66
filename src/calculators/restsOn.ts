import type { FactId } from '#lib/catalogue.ts';
import type { CalculatorId } from './index.ts';

/** The facts each calculator's result rests on. Apart from the calculators: pages print them, browsers need not load them. */
export const restsOn: Readonly<Record<CalculatorId, readonly FactId[]>> = {
  'midline-and-sides': ['few-see-mm', 'most-see-mm', 'example-error-mm', 'ten-comparisons', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 'family-false-alarm'],
  'level-line': ['arches-apart-mm', 'thread-length-mm', 'example-error-mm', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 'factor-95'],
  'front-and-tail': ['nostril-middle-share', 'tail-inside-the-line', 'tail-tip-in-the-band', 'lengths-equal', 'example-error-mm', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 'family-false-alarm'],
  'outline-and-cover': ['thickness-equal', 'lengths-equal', 'tail-inside-the-line', 'tail-tip-in-the-band', 'front-above-an-anchor', 'example-error-mm', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 'family-false-alarm'],
  'cover-the-old-shape': ['cover-margin-factor', 'margin-taper-mm', 'leave-below-mm', 'lower-raised-or-higher-lowered', 'lighten-what-does-not-fit', 'example-error-mm', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 'family-false-alarm'],
  pose: ['turn-3-deg-tail-mm', 'brow-straight-mm', 'nod-none-tail-mm', 'near-midface-taller', 'selfie-nose-longer', 'head-nod-drift-deg'],
  'after-the-first-pass': ['swollen-chase-from-mm', 'add-or-stop', 'example-error-mm', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 'family-false-alarm'],
  'measuring-error': ['pairs-for-own-error', 'repeat-factor', 'factor-95', 'family-false-alarm', 'ten-comparisons', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 't-of-three-readings', 'chi-square-low-of-twenty'],
  'two-readings': ['example-error-mm', 'pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm', 'family-false-alarm', 'map-at-rest', 'upright-to-draw'],
  'usual-difference': ['unequal-at-front-mm', 'unequal-at-middle-mm', 'unequal-at-tail-mm', 'few-see-mm', 'most-see-mm'],
  'hair-and-bone': ['brow-against-rim-people', 'tail-falls-mm'],
  'arch-placement': ['arch-women-of-eye-width', 'arch-models-of-eye-width', 'arch-two-thirds', 'arch-four-places-raters', 'arch-near-outer-corner-people', 'arch-rules-p-value', 'iris-width-mm', 'golden-share', 'golden-share-from-tail'],
  'strokes-and-dots': ['stroke-spread-mm', 'dot-spread-mm', 'lines-widen', 'hair-stroke-needle-mm', 'tattoo-needle-mm', 'fine-detail-lost-years'],
  'mix-by-drops': ['epidermis-mm', 'model-depth-mm', 'veil-share', 'surface-outside', 'surface-inside', 'skin-scattering-at-500-nm', 'melanosome-at-500-nm', 'melanosome-power', 'skin-baseline', 'blood-haemoglobin', 'haemoglobin-molar-mass', 'blood-saturation'],
  'which-hue': ['epidermis-mm', 'model-depth-mm', 'veil-share', 'surface-outside', 'surface-inside', 'skin-scattering-at-500-nm', 'melanosome-at-500-nm', 'melanosome-power', 'skin-baseline', 'blood-haemoglobin', 'haemoglobin-molar-mass', 'blood-saturation'],
  'find-a-recipe': ['epidermis-mm', 'model-depth-mm', 'veil-share', 'surface-outside', 'surface-inside', 'skin-scattering-at-500-nm', 'melanosome-at-500-nm', 'melanosome-power', 'skin-baseline', 'blood-haemoglobin', 'haemoglobin-molar-mass', 'blood-saturation'],
  'why-it-healed-this-way': ['one-reading-doubt', 'skin-reading-repeats', 'model-depth-mm', 'losses-looked-at', 'pigment-put-in-least', 'pigment-put-in-mean', 'pigment-put-in-most', 'deposit-unchanged-days', 'epidermis-mm', 'veil-share', 'surface-outside', 'surface-inside', 'skin-scattering-at-500-nm', 'melanosome-at-500-nm', 'melanosome-power', 'skin-baseline', 'blood-haemoglobin', 'haemoglobin-molar-mass', 'blood-saturation'],
  'skin-reading': ['ita-very-light-above-deg', 'ita-light-above-deg', 'ita-intermediate-above-deg', 'ita-tan-above-deg', 'ita-dark-up-to-deg', 'skin-reading-repeats', 'one-reading-doubt', 'touched-doubt-a', 'leans-red-below-deg', 'leans-yellow-from-deg', 'read-skin-untouched', 'camera-doubt', 'grey-card-throws-back', 'card-tint-most'],
};
