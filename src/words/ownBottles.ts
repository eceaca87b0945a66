import type { PigmentId } from '#lib/colour/pigment/pigments.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { fixed } from './number.ts';

export const ownWords = {
  opens:
    'Up to twelve bottles of your own stand beside the twelve of this site. They stay on this device. A copied link holds their drops and not what is in them.',
  none: 'There is none yet.',
  name: 'Name, for yourself',
  nameHint: 'At most 40 letters. It never leaves this device unless you save a file.',
  known: 'What do you know about it?',
  one: 'One more bottle',
  add: 'Add this bottle',
  noName: 'Give it a name, so that you know it again.',
  longName: 'Use at most 40 letters.',
  remove: 'Take away',
  bring: 'Bring it back',
  save: 'Save bottles as a file',
  open: 'Open a file of bottles',
  saved: 'Saved. The file holds your bottles and their names.',
  failed: 'The file could not be read. Your bottles are as they were.',
  notKept:
    'This browser keeps nothing for this page: your bottles go when it is closed. Save them as a file.',
  setAside:
    'What was kept here could not be read. It was set aside untouched, and a new list was begun. Open your file of bottles if you have one.',
  newer:
    'A newer version of the site keeps bottles here. They are untouched. Load the page again to get that version; what you add now is not kept.',
  full: 'All twelve places are taken. Take a bottle away first.',
} as const;

export const fromWords = {
  shares: 'the pigments on its label',
  swatch: 'one swatch, read in L*, a*, b*',
  'two-swatches': 'two swatches: alone and with white',
} as const;

export const finishWords = {
  matt: 'matt, like dry powder',
  'shine-out': 'a shiny film, shine left out by the instrument',
  'shine-in': 'a shiny film, shine counted in',
} as const;

/** Pigments as a label names them. */
export const pigmentWords = {
  '77891': 'White, CI 77891',
  '77492': 'Yellow oxide, CI 77492',
  '77491': 'Red oxide, CI 77491',
  '77499': 'Black oxide, CI 77499',
  '77266': 'Carbon black, CI 77266',
} as const satisfies Readonly<Record<PigmentId, string>>;

/** "Sum: 10 parts." or "Sum: 100, so they are per cent." */
export function sumWords(whole: number): string {
  if (whole === 0) return 'Sum: 0. Give at least one pigment a part.';
  const shown = fixed(whole, Number.isInteger(whole) ? 0 : 1);
  return Math.abs(whole - 100) < 1e-9
    ? 'Sum: 100, so these are per cent.'
    : `Sum: ${shown} parts. Only the ratio counts.`;
}

const reasons: Readonly<Record<string, string>> = {
  'no-shares': 'Give at least one pigment a part.',
  'below-zero': 'A part cannot be below zero.',
  'no-smooth-spectrum': 'No powder reflects this colour. Check the three numbers.',
  'blue-or-violet':
    'Blues and violets cannot be told from a swatch: in tests the guess was wrong by five to six units. Use the pigments on the label.',
  'darker-than-its-shine':
    'The swatch is darker than the shine of its own film. Read it with the shine left out, or as matt.',
  'no-drops': 'Both counts of drops must be above zero.',
  'tint-not-lighter': 'The tint must be lighter than the bottle alone. Were the two swatches mixed up?',
  'tint-whiter-than-white': 'The tint is whiter than the white it was mixed with.',
  'tint-of-another-pigment':
    'This tint does not come from this bottle and white: hue and lightness do not fit together. Read both swatches again.',
};

/** Why a bottle cannot be mixed, at the field it concerns. */
export function ownRefusal(reason: string): string {
  return reasons[reason] ?? 'This cannot be mixed.';
}

/** What is told about a bottle that was added. */
export function readyWords(
  content: Readonly<{ from: keyof typeof fromWords; parts?: Readonly<Partial<Record<PigmentId, number>>> }>,
  isTested: boolean,
  calibrated?: Readonly<{ scatter: number; tintMiss: number }>,
): string {
  const from =
    content.from === 'shares' ? sharesSaid(content.parts ?? {}) : `From ${fromWords[content.from]}.`;
  const strength = calibrated
    ? ` A drop throws back ${fixed(calibrated.scatter / 1.2, 2)} times the light of a drop of white. The tint comes back within ${fixed(calibrated.tintMiss)}.`
    : content.from === 'swatch'
      ? ' Its strength is assumed: yellow and red oxide stand for it.'
      : '';
  return `${from}${strength}${isTested ? '' : ' No measured powder of this hue was at hand: trust it less.'}`;
}

function sharesSaid(parts: Readonly<Partial<Record<PigmentId, number>>>): string {
  const whole = Object.values(parts).reduce((sum, part) => sum + part, 0);
  const named = isPigment(parts)
    .filter(([, part]) => part > 0)
    .sort(([, one], [, other]) => other - one);
  const said = named
    .map(([id, part]) => `${pigmentWords[id].split(',')[0] ?? id} ${fixed((100 * part) / whole, 0)} %`)
    .join(', ');
  return `${said.charAt(0)}${said.slice(1).toLowerCase()}.`;
}

function isPigment(parts: Readonly<Partial<Record<PigmentId, number>>>): (readonly [PigmentId, number])[] {
  return (['77891', '77492', '77491', '77499', '77266'] as const).map((id) => [id, parts[id] ?? 0] as const);
}

export const labName = { l: 'L*', a: 'a*', b: 'b*' } as const satisfies Readonly<Record<keyof Lab, string>>;

type Refused = Readonly<{
  reason: 'too-large' | 'not-a-file-of-ours' | 'damaged' | 'newer-schema' | 'bottle';
  schema?: number;
  place?: number;
  part?: string;
}>;

const partWords: Readonly<Record<string, string>> = {
  slot: 'its place',
  name: 'its name',
  shares: 'its pigments',
  swatch: 'its swatch',
  masstone: 'the swatch of the bottle alone',
  tint: 'the swatch of the tint',
  drops: 'the drops of the tint',
};

/** Why a file of bottles was not opened. */
export function bottleFileRefusal({ reason, schema, place, part = '' }: Refused): string {
  const kept = 'Your bottles are as they were.';
  switch (reason) {
    case 'too-large':
      return `This file is too large to be one of ours. ${kept}`;
    case 'newer-schema':
      return `This file was saved by a newer version of the site (form ${schema}). Load the page again to get that version. ${kept}`;
    case 'damaged':
      return `Part of this file is missing or changed, so it was not opened. ${kept}`;
    case 'bottle':
      return `Bottle ${place} in this file cannot be used: look at ${partWords[part] ?? `“${part}”`}. None was added. ${kept}`;
    case 'not-a-file-of-ours':
      return `This is not a file of bottles saved by this site. ${kept}`;
  }
}

/** What opening a file did. */
export function joinedWords(
  joined:
    | Readonly<{ ok: true; added: number; same: number }>
    | Readonly<{ ok: false; free: number; wanted: number }>,
): string {
  if (!joined.ok)
    return `The file holds ${counted(joined.wanted)} and there is room for ${joined.free}. None was added. Your bottles are as they were.`;
  const same = joined.same === 0 ? '' : ` ${counted(joined.same)} of the file you have already.`;
  return `${counted(joined.added)} added.${same}`;
}

function counted(bottles: number): string {
  return bottles === 1 ? '1 bottle' : `${bottles} bottles`;
}
