import { isBeingMended } from './beingMended.ts';
import { fixed } from './number.ts';

/** Five bottles by short names. */
export const hueBottleWords = {
  'yellow-oxide-some-white': 'Yellow oxide, some white',
  orange: 'Orange: yellow and red oxide',
  'red-oxide-some-yellow': 'Red oxide, some yellow',
  'dark-brown-iron': 'Dark brown, iron black',
  'black-iron': 'Iron black',
} as const;
type Row = Readonly<{
  id: string;
  /** Of a bottle of one's own. */
  name?: string | undefined;
  cosine: number;
  move: readonly [number, number, number];
  hasSwatch?: boolean;
}>;

const names: Readonly<Record<string, string>> = hueBottleWords;
/** A bottle by the name its owner gave it, or by what is in it. */
export const hueNameOf = ({ id, name }: Pick<Row, 'id' | 'name'>) => name ?? names[id] ?? id;

export const whichHueLabels = { skin: 'The skin beside the brow', old: 'Old pigment' } as const;
export const whichSkinWords = {
  l72: 'L* 72, a* 8, b* 16',
  l63: 'L* 63, a* 10, b* 19',
  l54: 'L* 54, a* 11, b* 18',
  l45: 'L* 45, a* 11, b* 17',
  l36: 'L* 36, a* 10, b* 14',
} as const;
export const whichOldWords = {
  'grey-blue': 'grey-blue',
  green: 'green',
  violet: 'violet',
  pink: 'pink',
  orange: 'orange',
} as const;

/** The skin and the old pigment, for paper: there the fields are left out. */
export function whichHueOnPaper(
  { skin, old }: Readonly<{ skin: keyof typeof whichSkinWords; old: keyof typeof whichOldWords }>,
  [l, a, b]: Row['move'],
): string {
  return `Skin ${whichSkinWords[skin]}. Old pigment: ${whichOldWords[old]}, L* ${fixed(l)}, a* ${fixed(a)}, b* ${fixed(b)}.`;
}

/** "+1.2", "−0.4", "0.0" */
export const changeWords = (value: number) => (value > 0 ? `+${fixed(value)}` : fixed(value));

type Told = Readonly<{ rows: readonly Row[]; wayA: number; wayB: number }>;
const wayWords = ({ wayA, wayB }: Told) =>
  `The way back to the skin is a* ${changeWords(wayA)}, b* ${changeWords(wayB)}.`;

/** The bottle that points back best, what it costs, and how yellow alone compares. */
export function whichHueSays(told: Told): Readonly<{ answer: string; doubt: string }> {
  const { rows } = told;
  const [best] = rows;
  const yellow = rows.find(({ id }) => id === 'yellow-oxide-some-white');
  if (!best || !yellow) return { answer: '', doubt: '' };
  const one = `In this model one small dose changes a* by ${changeWords(best.move[1])}, b* by ${changeWords(best.move[2])}, and L* by ${changeWords(best.move[0])}.`;
  const other =
    best === yellow
      ? ''
      : ` Yellow alone: a* ${changeWords(yellow.move[1])}, b* ${changeWords(yellow.move[2])}.`;
  return {
    answer: `${best.name === undefined ? hueNameOf(best).replace(/:.*/, '') : `“${best.name}”`} points back most nearly (cosine ${fixed(best.cosine, 2)}).`,
    doubt: `${wayWords(told)} ${one}${other}`,
  };
}

/**
 * What the page says today. While it is being mended no bottle: a direction alone, however short, would be
 * taken for advice.
 */
export const whichHueToSay = (told: Told): ReturnType<typeof whichHueSays> =>
  isBeingMended('calculators', 'which-hue') ? { answer: wayWords(told), doubt: '' } : whichHueSays(told);

/** What has to be said before anybody trusts the best row. */
export function whichHueCaution([best]: readonly Row[]): string | undefined {
  return best?.hasSwatch ? 'A swatch does not say how much white is in it. Read its label.' : undefined;
}
