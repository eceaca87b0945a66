import type { Cause } from '#lib/colour/healing/whatMatters.ts';

/** What is changed, in plain words. */
export const causeWords = {
  dose: 'dose: a quarter less to a quarter more',
  coverage: 'skin covered: a quarter less to a quarter more',
  depth: 'model depth: doubled',
  veil: 'veil above: over its whole range',
  backscatter: 'light the pigment throws back: half to double',
  '77891': 'titanium white: a fifth stronger',
  '77492': 'yellow oxide: a fifth stronger',
  '77491': 'red oxide: a fifth stronger',
  '77499': 'iron black: a fifth stronger',
  '77266': 'carbon black: a fifth stronger',
} as const satisfies Readonly<Record<Cause, string>>;

/** The name before the colon, for a sentence: "skin covered". */
const causeName = (cause: Cause) => causeWords[cause].split(':')[0] ?? '';

/** The largest cause and the smallest, in one sentence. */
export function mattersSay(matters: readonly Readonly<{ cause: Cause }>[]): string {
  const [first, second] = matters;
  const last = matters.at(-1);
  if (!first || !second || !last) return '';
  return `Here ${causeName(first.cause)} moves the colour most, then ${causeName(second.cause)}; ${causeName(last.cause)} moves it least.`;
}

/** "fresh", "6 weeks", "1 year". */
export function weeksWords(weeks: number): string {
  if (weeks === 0) return 'fresh';
  const years = (weeks - 6) / 52;
  return years === 0
    ? 'six weeks'
    : years === 0.5
      ? 'half a year'
      : years === 1
        ? 'one year'
        : years === 1.5
          ? 'a year and a half'
          : 'two years';
}
