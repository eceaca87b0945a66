import { factOf, type FactId } from '#lib/catalogue.ts';
import { bibliography, type SourceId } from '#lib/evidence/bibliography.ts';
import type { Backing, Fact, Status } from '#lib/evidence/fact.ts';
import type { HowMuchRead, Source, SourceKind } from '#lib/evidence/source.ts';
import { factNames } from './facts/index.ts';
import { withUnit } from './units.ts';

export { factNames } from './facts/index.ts';

/** The grade word of a value. */
export const gradeWords = {
  published: 'Published',
  computed: 'Computed',
  'common-practice': 'Common practice',
  'from-memory': 'From memory',
  assumed: 'Assumed',
} as const satisfies Readonly<Record<Status, string>>;

/** The word of a published source, by kind. */
export const kindWords = {
  law: 'Law',
  standard: 'Standard',
  label: 'Label',
  guidance: 'Guidance',
  study: 'Study',
  review: 'Review',
  data: 'Data',
} as const satisfies Readonly<Record<SourceKind, string>>;

/** How much of a source was opened. */
export const readWords = {
  whole: 'read whole',
  part: 'read in part',
  abstract: 'abstract read',
  copy: 'read as a copy',
  none: 'named, not read',
} as const satisfies Readonly<Record<HowMuchRead, string>>;

/** What a grade means, one sentence each. */
export const gradeMeanings = {
  published: 'Read in the source named beside it, on the day given.',
  computed: 'Worked out here from other values of the same part.',
  'common-practice': 'How artists work; no study was found for it.',
  'from-memory': 'Known, but not read again for this site; to be replaced.',
  assumed: 'Chosen so that there is something to show; you can change it.',
} as const satisfies Readonly<Record<Status, string>>;

/** How outside checks are kept true. */
export const checkedAgain =
  'Each is computed again whenever the site is built. A test changes our own constant by 1\u00a0% and expects the row to fail.';

/** The pencil stroke before a chip says how strong the ground is. */
export type Stroke = 'law' | 'standard' | 'label' | 'study' | 'calc' | 'habit' | 'memory';
export type Chip = Readonly<{ stroke: Stroke; word: string; name: string }>;

const strokes = {
  law: 'law',
  standard: 'standard',
  label: 'label',
  guidance: 'study',
  study: 'study',
  review: 'study',
  data: 'study',
} as const satisfies Readonly<Record<SourceKind, Stroke>>;

/** The chip of a backing: stroke, grade word, and the source's short name where there is one. */
function chipOfBacking(backing: Backing): Chip {
  if (backing.status === 'published') {
    const { kind } = sourceOf(backing.source);
    return { stroke: strokes[kind], word: kindWords[kind], name: shortName(backing.source) };
  }
  const stroke =
    backing.status === 'computed' ? 'calc' : backing.status === 'common-practice' ? 'habit' : 'memory';
  return { stroke, word: gradeWords[backing.status], name: '' };
}

/** The chip of a fact. */
export function chip(id: FactId): Chip {
  return chipOfBacking(factOf(id).backing);
}

/** The value of a fact as text, with its unit; a habit's sentence where there is no number. */
export function factText(id: FactId): string {
  const { value, unit, backing } = factOf(id);
  if (typeof value === 'number') return withUnit(value, unit);
  return 'note' in backing ? backing.note : factNames[id];
}

/** The range of a fact as text: "1.14 to 1.54 mm"; nothing where it has none. */
export function rangeText(id: FactId): string {
  const { range, unit } = factOf(id);
  if (range === undefined || typeof range[0] !== 'number' || typeof range[1] !== 'number') return '';
  return `${withUnit(range[0], '1')} to ${withUnit(range[1], unit)}`;
}

/** What stands behind a fact, one sentence for the Evidence pages. */
export function backingText({ backing }: Fact<unknown>): string {
  if (backing.status !== 'published') return backing.note;
  return `${shortName(backing.source)}, ${backing.where}: “${backing.quote}”`;
}

/** The chip's name of a source: first author's family name and year, or the short name given. */
export function shortName(id: SourceId): string {
  const { authors, year, short } = sourceOf(id);
  if (short !== undefined) return short;
  const family = (authors.split(/,| and /)[0] ?? authors).replace(/ [A-Z]{1,4}$/, '');
  return year === undefined ? family : `${family} ${year}`;
}

/** A full citation. */
export function citation(id: SourceId): string {
  const { authors, year, title, where, place } = sourceOf(id);
  return `${authors}${year === undefined ? '' : ` (${year})`}. ${title}. ${where}${place === undefined ? '' : ` (${place})`}.`;
}

/** The country a source speaks for, and its year. */
export function placeAndYear(id: SourceId): string {
  const { place, year } = sourceOf(id);
  return `${place === undefined ? '' : `${place}, `}${year ?? 'no year given'}`;
}

/** Where a source can be opened: its own address, or its DOI. */
export function addressOf(id: SourceId): string | undefined {
  const { address, doi } = sourceOf(id);
  return address ?? (doi === undefined ? undefined : `https://doi.org/${doi}`);
}

export function sourceOf(id: SourceId): Source {
  return bibliography[id];
}
