import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { mappingValues } from '../numbers/values.ts';

const reviewed = '2026-11-25';

/** Skin that is numb or swollen, and what may still change after the first pass. */
export const againFacts = {
  'skin-before-numbing-mm': {
    value: 1.86,
    unit: 'mm',
    backing: published(
      'tahir-2006',
      'abstract, results',
      'Mean skin thickness +/- SEM increased from 1.86 +/- 0.055 mm',
    ),
    reviewed,
    caveat: 'Skin of the thigh under a covered numbing cream for at least two hours, 20 people; not a brow.',
  },
  'skin-after-numbing-mm': {
    value: 1.96,
    unit: 'mm',
    backing: published('tahir-2006', 'abstract, results', 'application to 1.96 +/- 0.051 mm'),
    reviewed,
    caveat: 'Skin of the thigh under a covered numbing cream for at least two hours, 20 people; not a brow.',
  },
  'pale-after-numbing': {
    value: 66,
    unit: '%',
    backing: published(
      'blanching-1990',
      'abstract',
      'We found 33 cases (66%) of blanching after application',
    ),
    reviewed,
    caveat: '50 people, one hour under a dressing; gone in less than three hours.',
  },
  'numbing-shop-limit': {
    value: 4,
    unit: '%',
    backing: published(
      'fda-numbing-2024',
      'what the agency warns of',
      'Products containing lidocaine over 4% can contribute to health problems like an irregular heartbeat, seizures and breathing difficulties',
    ),
    reviewed,
    caveat: 'United States, products sold without prescription. Your label and your local code come first.',
  },
  'swollen-chase-from-mm': {
    value: mappingValues['swollen-chase-from-mm'],
    unit: 'mm',
    backing: commonPractice(
      'On swollen skin a gap under a millimetre is not chased: it is looked at again when the skin has healed.',
    ),
    range: [0.5, 2],
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;

export const againHabits = {
  'add-or-stop': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'After the first pass there are two answers at each mark: add here, or stop. Pigment that is in the skin is not taken out with a needle. A place whose two edges moved alike is read again first.',
    ),
  },
} as const satisfies Readonly<Record<string, Practice>>;
