import { assumed, commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { modelValues } from '../numbers/model.ts';

const reviewed = '2026-11-25';
const darkening = 'Of the 20 tattoos, 7 lightened, 9 failed to change, and 4 darkened after laser treatment.';
const twenty =
  'Twenty tattoos that had a biopsy after laser: not a sample of all. White pigment was found often where laser did poorly.';

/** Covering old pigment, or lightening it first. */
export const coverFacts = {
  'laser-tattoos-biopsied': {
    value: 20,
    unit: '1',
    backing: published('ross-2001', 'abstract', darkening),
    reviewed,
    caveat: twenty,
  },
  'laser-lightened': {
    value: 7,
    unit: '1',
    backing: published('ross-2001', 'abstract', darkening),
    reviewed,
    caveat: twenty,
  },
  'laser-darkened': {
    value: 4,
    unit: '1',
    backing: published('ross-2001', 'abstract', darkening),
    reviewed,
    caveat: twenty,
  },
  'laser-brow-people': {
    value: 98,
    unit: 'people',
    backing: published(
      'picosecond-brows',
      'abstract',
      'This current retrospective study, including 98 patients aged 21 to 71 years',
    ),
    reviewed,
  },
  'laser-brow-turned-grey': {
    value: 18,
    unit: 'people',
    backing: published(
      'picosecond-brows',
      'abstract',
      'A total of 18 patients experienced immediate grey discoloration',
    ),
    reviewed,
    caveat: 'It did not change the number of sessions much.',
  },
  'cover-counts-below': {
    value: modelValues.reachedBelow,
    unit: '1',
    backing: assumed('Colour difference below which a recipe counts as reaching its target.'),
    reviewed,
  },
  'old-red-heals-pink': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('Old red heals pink or salmon.'),
    reviewed,
  },
  'remnant-brown-dark-enough': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'A thin pink remnant is covered by a brown dark enough for it, and not darker than needed.',
    ),
    reviewed,
  },
  'white-hides-for-a-while': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'White and skin-coloured layers hide old work for a while only, and make the next step harder.',
    ),
    reviewed,
  },
  'recipes-in-drops': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('Recipes are counted in drops from the bottles, and written down.'),
    reviewed,
  },
  'brown-with-orange': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'Over grey-blue, artists add a part of orange to a brown rather than put orange in alone.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
