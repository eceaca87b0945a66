import { assumed, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';
import { lossesLookedAt } from '../healing/healingAxes.ts';

const reviewed = '2026-11-25';
const putIn = (value: number): Fact => ({
  value,
  unit: 'mg/cm²',
  reviewed,
  caveat: 'One red pigment, excised pig and human skin, several ways of tattooing.',
  backing: published(
    'engel-2008',
    'abstract',
    'The concentration of pigments ranged from about 0.60 to 9.42 mg/cm(2) of tattooed skin (mean value 2.53 mg/cm(2))',
  ),
});

/** How much is put in, what stays, and which losses are looked at. */
export const healedFacts = {
  'pigment-put-in-least': putIn(0.6),
  'pigment-put-in-mean': putIn(2.53),
  'pigment-put-in-most': putIn(9.42),
  'deposit-unchanged-days': {
    value: 28,
    unit: 'days',
    backing: published(
      'pig-28-days',
      'abstract',
      'Deposits in skin were unchanged from days 7-28 indicating no redistribution or elimination.',
    ),
    reviewed,
    caveat: 'Three pigs, the inner thigh, no iron oxide: nothing about a year in a brow.',
  },
  'losses-looked-at': {
    value: lossesLookedAt[4],
    unit: '1',
    backing: assumed(
      'No measured rate of loss was found: losses from half to twice the assumed one are looked at.',
    ),
    range: [lossesLookedAt[0], lossesLookedAt[4]],
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;
