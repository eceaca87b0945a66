import type { ItaClass } from '#lib/colour/spaces/ita.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { fixed } from './number.ts';

/** The classes of Chardon and Del Bino's scheme. */
const itaClassWords = {
  'very-light': 'very light',
  light: 'light',
  intermediate: 'intermediate',
  tan: 'tan',
  brown: 'brown',
  dark: 'dark',
} as const satisfies Readonly<Record<ItaClass, string>>;

export const touchWords = {
  untouched: 'yes: nothing had touched it',
  touched: 'no: wiped, drawn on or numbed',
  'not-known': 'not known',
} as const;
export const countWords = { '1': 'one reading', '2': 'two readings', '3': 'three readings' } as const;

type Span = Readonly<{ value: number; lo: number; hi: number }>;
type Reading =
  | Readonly<{
      ok: true;
      box: Readonly<{ l: Span; a: Span; b: Span }>;
      ita: Span;
      hue: Span;
      itaClass: ItaClass;
      classes: readonly ItaClass[];
      lean: 'red' | 'between' | 'yellow' | 'not-shown';
    }>
  | Readonly<{ ok: false; reason: 'no-reading' | 'outside-the-scale' }>;

const leanWords = {
  red: 'It leans red.',
  between: 'It leans neither red nor yellow.',
  yellow: 'It leans yellow.',
  'not-shown': 'Which way it leans is not shown.',
} as const;
const ends = ({ lo, hi }: Span, unit = '') => `${fixed(lo)} to ${fixed(hi)}${unit}`;

/** "“light” or “intermediate”": every class the interval touches. */
function classesSaid(classes: readonly ItaClass[]): string {
  const said = classes.map((name) => `“${itaClassWords[name]}”`);
  return said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} or ${said.at(-1) ?? ''}`;
}

/** Both angles with their intervals, and the class with its scheme. */
export function skinReadingSays({
  reading,
}: Readonly<{ reading: Reading }>): Readonly<{ answer: string; doubt: string }> {
  if (!reading.ok) {
    return {
      answer: 'This colour has no typology angle.',
      doubt:
        'There is too little yellow in it, or there may be none: outside the scale. Check the reading and the lamp.',
    };
  }
  const { ita, hue, itaClass, classes, lean } = reading;
  const sure =
    classes.length === 1 ? 'The class is sure.' : `With the doubt it may be ${classesSaid(classes)}.`;
  return {
    answer: `Hue angle ${fixed(hue.value)}°, typology angle ${fixed(ita.value)}°: “${itaClassWords[itaClass]}” in the scheme of Chardon and Del Bino.`,
    doubt: `Hue lies between ${fixed(hue.lo)} and ${fixed(hue.hi)}°. ${leanWords[lean]} The typology angle lies between ${fixed(ita.lo)} and ${fixed(ita.hi)}°. ${sure}`,
  };
}

/** What has to be said before anybody uses the reading. */
export function skinReadingCaution(
  result: Readonly<{ reading: Reading; isClipped: boolean }>,
  touch: keyof typeof touchWords,
  plausible: 'like-the-measured' | 'outside-the-measured' | 'no-skin-like-it',
): string | undefined {
  if (plausible === 'no-skin-like-it') return 'No measured skin is like this. Check the three numbers.';
  if (touch === 'touched')
    return 'Touched skin is another colour for a while. Wait until it looks as it did, then read again.';
  if (touch === 'not-known')
    return 'Nobody knows whether the skin was touched, so the reading counts as touched.';
  if (plausible === 'outside-the-measured')
    return 'This colour lies outside the skins the colour model was measured on. That is a gap in the measuring: read three places, and trust the prediction less.';
  if (result.isClipped)
    return 'Your screen cannot show this colour and shows the nearest it can. The numbers hold.';
  return undefined;
}

/** One row a number: its name, value and interval. */
export function skinReadingRows(
  reading: Reading,
): readonly Readonly<{ name: string; value: string; between: string }>[] {
  if (!reading.ok) return [];
  const { box, ita, hue } = reading;
  const plain = (name: string, span: Span, unit = '') => ({
    name,
    value: `${fixed(span.value)}${unit}`,
    between: ends(span, unit),
  });
  return [
    plain('Lightness L*', box.l),
    plain('Red a*', box.a),
    plain('Yellow b*', box.b),
    plain('Hue angle', hue, '°'),
    plain('Typology angle (ITA)', ita, '°'),
  ];
}

/** Each reading, and whether the skin had been touched, for paper: there the fields are left out. */
export function skinOnPaper(readings: readonly Lab[], touch: keyof typeof touchWords): string {
  return `${readings.map((lab, i) => `Reading ${i + 1}: ${cardLabel(lab)}`).join('. ')}. Read before wiping, drawing or numbing: ${touchWords[touch]}.`;
}

/** What the two angles cannot say. */
export const cannotSay = [
  'The typology angle leaves redness out. Two people with the same angle can differ clearly in hue.',
  'Neither angle is a sun type. Types come from questions about burning and tanning.',
  'Neither angle is the undertone. Overtone and undertone are both in the reading, mixed.',
] as const;

/** "L* 62, a* 10, b* 17" for the card. */
export function cardLabel({ l, a, b }: Lab): string {
  return `L* ${fixed(l)}, a* ${fixed(a)}, b* ${fixed(b)}`;
}
