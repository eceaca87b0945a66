import { computed, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';
const faces =
  'discrepancies with respect to average values for 18 illuminants were small (1.5% and 5.0% for Orientals and Caucasians, respectively)';
const booth =
  'The level of illumination at the colour-matching position shall be between 1 000 lx and 4000 lx';

/** Lamps to judge colours under, and what they do to skin. */
export const lampFacts = {
  'tungsten-kelvin': {
    value: 2856,
    unit: 'K',
    backing: published(
      'illuminant-a-docs',
      'description',
      'Its relative spectral power distribution is that of a Planckian radiator at a temperature of approximately 2856 K.',
    ),
    reviewed,
  },
  'tungsten-adds-to-skin': {
    value: 6.5,
    unit: '1',
    backing: computed(
      'A skin of L* 63, a* 10, b* 19 as a spectrum, then its a* under the tungsten lamp less its a* in daylight',
    ),
    range: [5.1, 6.5],
    reviewed,
    caveat: 'Five example skins of this site, each against the white of its own lamp.',
  },
  'faces-under-lamps-people': {
    value: 87,
    unit: 'people',
    backing: published(
      'white-leds-2018',
      'abstract',
      'spectral reflectance factors on forehead and cheek of 87 young healthy women (50 Caucasians and 37 Orientals)',
    ),
    reviewed,
    caveat: 'Young women; no brow tattoos.',
  },
  'lamps-compared': {
    value: 18,
    unit: '1',
    backing: published(
      'white-leds-2018',
      'abstract',
      'Under each of these 18 illuminants, we analysed the magnitude and components',
    ),
    reviewed,
  },
  'lamp-moves-difference': {
    value: 5,
    unit: '%',
    backing: published('white-leds-2018', 'abstract', faces),
    range: [1.5, 5],
    reviewed,
    caveat: 'Forehead against cheek, the older colour difference.',
  },
  'judging-light-least-lx': {
    value: 1000,
    unit: 'lx',
    backing: published('iso-3668-2017', 'section 5.2', booth),
    reviewed,
    caveat: 'Written for paints.',
  },
  'judging-light-most-lx': {
    value: 4000,
    unit: 'lx',
    backing: published('iso-3668-2017', 'section 5.2', booth),
    reviewed,
    caveat: 'Written for paints; dark colours want the upper end.',
  },
} as const satisfies Readonly<Record<string, Fact>>;
