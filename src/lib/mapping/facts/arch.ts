import { commonPractice, computed, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { archOfEyeWidth, archOfEyeWidthSpread, irisEdgeOfEyeWidth } from '../numbers/arch.ts';

const reviewed = '2026-11-25';
const models =
  'The mean±SD EAP:EW ratio for the fashion models was 0.978±0.131; the mean±SD LL:EW ratio was 0.735±0.0673.';
const women =
  'The mean±SD EAP:EW ratio for the randomly selected group was 0.929±0.146; the mean±SD LL:EW ratio was 0.762±0.0420.';
const roth = (quote: string) => published('roth-2003', 'abstract, results', quote);
const nearTwoThirds =
  'defined by its arch, located near the junction between the medial two-thirds and lateral one-third';
const fromInner = 'Counted from the inner corner; brows as they were, also shaped ones.';
const along = 'Front to tail along the upper edge of one neutral, exactly symmetric face model.';

/** Where arches stand, and what is known about rules for placing them. */
export const archFacts = {
  'arch-women-of-eye-width': {
    value: archOfEyeWidth.women,
    unit: '1',
    backing: roth(women),
    caveat: fromInner,
    reviewed,
  },
  'arch-women-spread': { value: archOfEyeWidthSpread.women, unit: '1', backing: roth(women), reviewed },
  'arch-models-of-eye-width': {
    value: archOfEyeWidth.models,
    unit: '1',
    backing: roth(models),
    caveat: fromInner,
    reviewed,
  },
  'arch-models-spread': { value: archOfEyeWidthSpread.models, unit: '1', backing: roth(models), reviewed },
  'iris-edge-women-of-eye-width': {
    value: irisEdgeOfEyeWidth.women,
    unit: '1',
    backing: roth(women),
    reviewed,
  },
  'iris-edge-models-of-eye-width': {
    value: irisEdgeOfEyeWidth.models,
    unit: '1',
    backing: roth(models),
    reviewed,
  },
  'arch-women-asked': {
    value: 105,
    unit: 'people',
    reviewed,
    backing: published(
      'roth-2003',
      'abstract, methods',
      'Standardized full-face frontal photographs of 105 randomly selected women aged 21 to 61 years',
    ),
  },
  'arch-models-pictured': {
    value: 100,
    unit: 'people',
    reviewed,
    backing: published(
      'roth-2003',
      'abstract, methods',
      'Full-face frontal magazine photographs of 100 fashion models published between January and July 2001 were analyzed.',
    ),
  },
  'arch-two-thirds': {
    value: 66.7,
    unit: '%',
    backing: published('pham-2010', 'abstract, background', nearTwoThirds),
    caveat: 'Told as the usual definition, not as a result.',
    reviewed,
  },
  'arch-and-forehead-line': {
    value: 0.86,
    unit: '1',
    reviewed,
    caveat: 'The bony line at the temple can be felt; it cannot be read from a picture.',
    backing: published(
      'pham-2010',
      'abstract, results',
      'The Pearson correlation value was strongest between brow peak and deep temporal fusion line (P = .860)',
    ),
  },
  'arch-and-forehead-line-people': {
    value: 50,
    unit: 'people',
    reviewed,
    backing: published(
      'pham-2010',
      'abstract, methods',
      'Eyebrows were measured in 50 subjects from the medial aspect of the eyebrow',
    ),
  },
  'arch-near-outer-corner-people': {
    value: 40,
    unit: 'people',
    reviewed,
    caveat: 'The peak was just inside the outer eye corner, in women and in men.',
    backing: published(
      'sclafani-2010',
      'abstract, methods',
      'Photographs were taken of 40 adult subjects in 5 poses',
    ),
  },
  'arch-four-places-raters': {
    value: 171,
    unit: 'people',
    reviewed,
    caveat:
      'Four places were tried. Further out was liked better on younger faces, further in on older ones.',
    backing: published('biller-2009', 'heading of Table 1', 'Sex and Ethnicity of the 171 Study'),
  },
  'arch-rules-p-value': {
    value: 0.2454,
    unit: '1',
    reviewed,
    backing: published(
      'hamamoto-2013',
      'abstract, results',
      'no significant difference in attractiveness score for the different methods was observed (p = 0.2454)',
    ),
  },
  'arch-rules-artists': {
    value: 50,
    unit: 'people',
    reviewed,
    backing: published(
      'hamamoto-2013',
      'abstract, methods',
      'A focus group of 50 professional makeup artists ranked the three images for each of the 10 faces',
    ),
  },
  'arch-rules-faces': {
    value: 10,
    unit: '1',
    reviewed,
    backing: published(
      'hamamoto-2013',
      'abstract, methods',
      'A focus group of 50 professional makeup artists ranked the three images for each of the 10 faces',
    ),
  },
  'golden-share': {
    value: 61.8,
    unit: '%',
    reviewed,
    backing: computed('The longer part of a line cut so that whole to longer is as longer to shorter.'),
  },
  'golden-share-from-tail': {
    value: 38.2,
    unit: '%',
    reviewed,
    backing: computed('The same cut, counted from the other end.', 'golden-share'),
  },
  'golden-point-moves-mm': {
    value: 3.4,
    unit: 'mm',
    reviewed,
    backing: computed(
      'Golden point by the length along the skin, less the one seen from the front.',
      'golden-share',
      'brow-straight-mm',
      'brow-along-skin-mm',
    ),
    caveat: along,
  },
  'arch-by-golden-section': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The arch is placed by the golden section of the brow’s length, counted from its front. No study was found that supports it.',
    ),
  },
  'one-arch-for-both': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'One front and one tail are settled for both sides first; both brows then get the same length and the same arch.',
    ),
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
