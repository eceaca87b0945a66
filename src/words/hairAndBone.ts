import { lengthOfMm, type Stretches } from '#lib/mapping/under/stretch.ts';
import { shareOf, type ReadUnder, type UnderOutline } from '#lib/mapping/under/underOutline.ts';
import { fixed } from './number.ts';

export const hairAndBoneLabels = {
  hairFrom: 'Hair begins',
  hairTo: 'Hair ends',
  thinFrom: 'Hair is thin from',
  boneArch: 'Bone’s edge at the arch',
  boneTail: 'Bone’s edge at the tail',
  cowlick: 'Cowlick at the front',
  cowlickAt: 'Middle of the cowlick',
} as const;

export const hairAndBoneHints = {
  hairFrom: 'All places count from the outline’s front.',
  boneArch: 'Over the outline’s lower edge. Minus: below it, so the shape lies on bone.',
} as const;

export const cowlickWords = { none: 'none', turned: 'hair turned the other way' } as const;

/** The rows of the table, each a part of the outline. */
export const underWords = {
  hair: 'Hair under it',
  thin: 'of that, thin hair',
  bareFront: 'Bare skin at the front',
  bareTail: 'Bare skin at the tail',
  offBone: 'Off the edge of the bone',
  nothing: 'Neither hair nor bone',
} as const satisfies Readonly<Record<Exclude<keyof UnderOutline, 'lengthMm'>, string>>;

/** "31.7 to 40.2 mm", "0.0 to 2.0 and 31.7 to 40.2 mm". */
export function stretchText(stretches: Stretches): string {
  return stretches.length === 0
    ? 'none'
    : `${stretches.map(({ fromMm, toMm }) => `${fixed(fromMm)} to ${fixed(toMm)}`).join(' and ')} mm`;
}

const percent = (share: number) => `${fixed(100 * share, 0)} %`;

/** What the figure of hair and bone says: where the shape sits on nothing, then on what the rest sits. */
export function hairAndBoneSays(
  read: ReadUnder,
  { cowlick, cowlickAt }: Readonly<{ cowlick: string; cowlickAt: number }>,
): Readonly<{ answer: string; doubt: string }> {
  if (!read.ok)
    return {
      answer: 'The hair ends before it begins.',
      doubt: 'Both places count from the outline’s front, outwards.',
    };
  const { under } = read;
  const { hair, thin, bareFront, bareTail, offBone, nothing } = under;
  const bareMm = lengthOfMm(bareFront) + lengthOfMm(bareTail);
  const off =
    offBone.length === 0
      ? 'The lower edge stays on the bone.'
      : `From ${stretchText(offBone)} the lower edge hangs below the bone’s edge: that part folds when she closes the eye and smiles.`;
  const thinly = thin.length === 0 ? '' : `, ${fixed(lengthOfMm(thin))} mm of it thin`;
  const turned =
    cowlick === 'turned' ? ` At ${fixed(cowlickAt)} mm the hair turns: strokes follow it, or stay out.` : '';
  return {
    answer:
      nothing.length === 0
        ? 'Every part of this outline sits on hair or on bone.'
        : `Do not draw from ${stretchText(nothing)}: neither hair nor bone lies under it (${percent(shareOf(under, nothing))} of the outline).`,
    doubt: `Hair lies under ${fixed(lengthOfMm(hair))} mm (${percent(shareOf(under, hair))})${thinly}. Bare skin: ${fixed(bareMm)} mm. ${off}${turned}`,
  };
}

/** Holds for every brow, whatever its numbers. */
export const underCaution =
  'Raised, scaly, itchy or lumpy skin, a mole, or hair lost lately without a reason: do not draw over it. A doctor looks first.';
