import { assumed, commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { strokeValues } from '../numbers/strokes.ts';

const reviewed = '2026-11-25';
const spreadRange = (mm: number) =>
  [
    Number((mm - strokeValues.spreadOffMm).toFixed(2)),
    Number((mm + strokeValues.spreadOffMm).toFixed(2)),
  ] as const;

/** Strokes and dots: how wide, how many, how they spread. */
export const strokeFacts = {
  'hair-stroke-needle-mm': {
    value: 0.16,
    unit: 'mm',
    backing: published(
      'surgeon-page-2020',
      'in the note on the name',
      'The smallest needles used for microblading are about 0.16mm',
    ),
    reviewed,
    caveat:
      'A surgeon’s page, not a measurement. A needle is not yet a stroke: the stroke is at least as wide.',
  },
  'tattoo-needle-mm': {
    value: 0.35,
    unit: 'mm',
    backing: published(
      'surgeon-page-2020',
      'in the note on the name',
      'The standard needle for standard tattoos is 0.35mm.',
    ),
    reviewed,
    caveat: 'The same page. Needles come in many sizes.',
  },
  'hairs-of-a-restored-brow': {
    value: 70,
    unit: '1',
    backing: published(
      'rajput-2021',
      'abstract',
      'allows us to plan an aesthetic reconstruction, requiring 70 to 120 grafts',
    ),
    range: [70, 120],
    reviewed,
    caveat: 'Hairs set by surgeons, not strokes. It shows what order of number a brow is made of.',
  },
  'fine-detail-lost-years': {
    value: 15,
    unit: 'years',
    backing: published(
      'eames-2011',
      'the author, quoted in a report',
      'they tend to lose their definition after 15 years - depending on how fine the lines are',
    ),
    reviewed,
    caveat:
      'A model of spreading ink in body tattoos. Nobody has published how wide strokes in brows become.',
  },
  'complex-detail-lost-years': {
    value: 10,
    unit: 'years',
    backing: published(
      'eames-2011',
      'a second report of the same paper',
      'The details of complex patterns are lost after about 10 years.',
    ),
    reviewed,
    caveat: 'The same model.',
  },
  'stroke-spread-mm': {
    value: strokeValues.strokeSpreadMm,
    unit: 'mm',
    backing: assumed(
      'Width of a fine stroke once it has spread. No published measurement in brows was found: slide it.',
    ),
    range: spreadRange(strokeValues.strokeSpreadMm),
    reviewed,
  },
  'dot-spread-mm': {
    value: strokeValues.dotSpreadMm,
    unit: 'mm',
    backing: assumed(
      'Diameter of a fine dot once it has spread. No published measurement in brows was found: slide it.',
    ),
    range: spreadRange(strokeValues.dotSpreadMm),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;

/** Habits of the trade about strokes, told without a source because none was found. */
export const strokeHabits = {
  'lines-widen': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'Drawn lines widen as they heal and again over the years: more where skin is oily or the line went deep.',
    ),
    reviewed,
  },
  'leave-bare-skin': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'Hair strokes are set with bare skin between them, and fewer at the first visit: a stroke can be added later and not taken out.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Practice>>;
