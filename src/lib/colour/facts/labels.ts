import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';
const ofFiftyFour = "analyses contained substances that weren't on the label";

/** What must stand on a label, and how far real ones could be trusted. */
export const labelFacts = {
  'label-inks-looked-at': {
    value: 54,
    unit: '1',
    backing: published(
      'moseman-2024',
      'news article on the study',
      `45 of the 54 inks they ran through chemical ${ofFiftyFour}`,
    ),
    reviewed,
    caveat: 'Six inks of each of nine makers, bought in the United States.',
  },
  'label-inks-wrong': {
    value: 45,
    unit: '1',
    backing: published(
      'moseman-2024',
      'news article on the study',
      `45 of the 54 inks they ran through chemical ${ofFiftyFour}`,
    ),
    reviewed,
    caveat: 'Pigments or additives. Why, was not asked.',
  },
  'swedish-inks-checked': {
    value: 29,
    unit: '1',
    backing: published(
      'swedish-agency-control',
      'summary',
      'kontrollerat 29 tatueringsfärger för tatuering eller permanent makeup på den svenska marknaden',
    ),
    reviewed,
    caveat: 'Under the older national rules, before those of the European Union.',
  },
  'swedish-inks-kept-the-rules': {
    value: 2,
    unit: '1',
    backing: published(
      'swedish-agency-control',
      'summary',
      'Av de kontrollerade tatueringsfärgerna var det endast 2 produkter som uppfyllde de regler som kontrollerats.',
    ),
    reviewed,
    caveat: 'Content and labels together.',
  },
  'ink-substances-limited': {
    value: 4000,
    unit: '1',
    backing: published(
      'swedish-agency-content',
      'manufacturers',
      'The REACH Regulation covers concentration limits for around 4,000 substances in in tattoo inks',
    ),
    reviewed,
    caveat: 'Traces need not be on the label at all.',
  },
  'label-order-free-below-percent': {
    value: 1,
    unit: '%',
    backing: published(
      'french-health-code',
      '8°',
      'Ingredients with a concentration of less than 1% may be listed in any order after those with a concentration of more than 1%.',
    ),
    reviewed,
    caveat: 'Read for France. Ask what your own country says.',
  },
  'pigments-recalled-by-lot': {
    value: 3,
    unit: '1',
    backing: published(
      'fda-recall-2024',
      'announcement',
      'recalling 3 water-based tattoo pigments, because they are contaminated with high concentrations of microorganisms',
    ),
    reviewed,
    caveat: 'The notice names batch, lot, day of making and last day.',
  },
  'label-names-the-batch': {
    value: 75,
    unit: '1',
    backing: published(
      'swedish-agency-labelling',
      'labelling requirements',
      'The labelling required according to entry 75, point 7, column 2 of Annex XVII of the REACH Regulation',
    ),
    reviewed,
    caveat:
      'The number of the entry. Point 7 asks for the use, a batch number and a list of ingredients, among others.',
  },
  'lot-in-the-record': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'Lot and date of every bottle used are written in the client’s record on the day.',
    ),
    reviewed,
  },
  'label-before-opening': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'The label is read before a bottle is opened: use, lot, ingredients, last day. A bottle without them is not used.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
