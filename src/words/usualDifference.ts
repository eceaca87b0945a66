import { fixed } from './number.ts';

type Place = 'front' | 'middle' | 'tail';

/** The place on the brow, as the reader would say it. */
export const placeWords: Readonly<Record<Place, string>> = {
  front: 'at the nose end',
  middle: 'in the middle',
  tail: 'at the temple end',
};

const seenWords = {
  'few-see': 'Few people see it.',
  'some-see': 'Some people see it.',
  'most-see': 'Most people see it.',
} as const;

type Result = Readonly<{
  meanMm: number;
  share: number;
  shareLo: number;
  shareHi: number;
  band: keyof typeof seenWords;
}>;

/** "about 37 in 100", never nothing and never all. */
function inHundred(share: number): string {
  const count = Math.round(share * 100);
  if (count < 1) return 'fewer than 1 in 100';
  if (count > 99) return 'nearly all';
  return `about ${count} in 100`;
}

/** What the figure of usual differences says. */
export function usualSays(
  { meanMm, share, shareLo, shareHi, band }: Result,
  { difference, place }: Readonly<{ difference: number; place: Place }>,
): Readonly<{ answer: string; doubt: string }> {
  const people = inHundred(share);
  const lo = Math.round(shareLo * 100);
  const hi = Math.round(shareHi * 100);
  const range = lo === hi ? '' : ` The study’s own doubt makes that ${lo} to ${hi}.`;
  return {
    answer: `A height difference of ${fixed(difference)} mm ${placeWords[place]}: ${people} people have that much or more.`,
    doubt: `${seenWords[band]} The average there is ${fixed(meanMm, 2)} mm.${range}`,
  };
}
