import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

type Three = readonly [number, number, number];
export const coverAnswers = ['cover', 'lighten', 'leave', 'skin-colour', 'darker'] as const;
export type CoverAnswer = (typeof coverAnswers)[number];

/** Clients without a story of their own: any ending can be theirs. */
export const coverClients = [
  'net mender',
  'lock keeper',
  'weaver',
  'florist',
  'bus driver',
  'glazier',
  'gardener',
] as const;

/**
 * Colours as L*a*b*; differences from the brown she wants: the old work now, the nearest recipe at two dates,
 * the nearest with white.
 */
export type DoNotCoverGiven = Readonly<{
  client: (typeof coverClients)[number];
  old: string;
  skin: Three;
  today: Three;
  wanted: Three;
  now: number;
  six: number;
  two: number;
  white: number;
}>;

/** The nearest recipe at its worse date. */
export const worseDate = ({ six, two }: Pick<DoNotCoverGiven, 'six' | 'two'>): number => Math.max(six, two);

const options: Readonly<Record<string, string>> = {
  cover: 'Cover it with the nearest recipe',
  lighten: 'Do not cover: speak of lightening first, or refer',
  leave: 'Leave it as it is',
  'skin-colour': 'First hide it under white or skin colour',
  darker: 'Cover it darker than she wants',
};
const lab = ([l, a, b]: Three) => `L* ${fixed(l)}, a* ${fixed(a)}, b* ${fixed(b)}`;
const nowWords = ({ now }: DoNotCoverGiven) => `the old work is ${fixed(now)} from the brown she wants`;
const worseWords = (given: DoNotCoverGiven) =>
  `the nearest recipe stays ${fixed(worseDate(given))} away at its worse date`;
const where = (given: DoNotCoverGiven) => `${nowWords(given)}, and ${worseWords(given)}.`;
const begun = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const doNotCoverWords: ProblemWords<DoNotCoverGiven> = {
  name: 'Cover, lighten first, or leave',
  summary:
    'Decide from the distances whether old work can be covered, should be lightened first, or is best left alone.',
  question: ({ client, old }) => `The ${client} has ${old} old work. What do you say?`,
  givens: ({ skin, today, wanted }) => [
    `The skin is flat, quiet and well. It has ${lab(skin)}; the old work ${lab(today)}; the brown she wants ${lab(wanted)}.`,
    'The table says how far things stay from that brown in this model. Under 3 counts as reached. The nearest recipe is the best of all with at most a tenth of white; the last line allows any share of white or skin colour.',
  ],
  table: ({ now, six, two, white }) => ({
    caption: 'Differences from the brown she wants',
    head: ['What', 'Apart'],
    rows: [
      ['Old work now', fixed(now)],
      ['Nearest recipe, at six weeks', fixed(six)],
      ['The same, at two years', fixed(two)],
      ['Nearest with white', fixed(white)],
    ],
  }),
  label: 'What you say',
  option: (code) => options[code] ?? code,
  steps: {
    now: {
      hint: 'Is the old work near enough to what she wants already? Then nothing has to be done.',
      done: (v) => `The old work is ${say(v, 'now')} away, against ${say(v, 'limit')}: ${say(v, 'verdict')}.`,
    },
    nearest: {
      hint: 'If not: take the nearest recipe at its worse date. White and skin colour do not count: they hide nothing for long.',
      done: (v) =>
        `The nearest recipe stays ${say(v, 'worse')} away at its worse date: ${say(v, 'verdict')}.`,
    },
    decide: {
      hint: 'Reached at both dates: cover. Not reached: do not cover. Near enough already: leave it.',
      done: (v) => `So: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) =>
    `${reply}. ${begun(where(given))}${given.now < 3 ? ' Nearer is nearly always possible, and no reason.' : ''}`,
  slips: {
    'covered-anyway': (given, reply) => ({
      title: given.now < 3 ? 'There is nothing to cover' : 'No recipe gets there',
      text: `“${reply}”: ${nowWords(given)}. ${given.now < 3 ? 'That is near enough already. Every refresh adds pigment and wear, so leave it, and look again later.' : `And ${worseWords(given)}. Under 3 would count. Covering costs her a session and leaves darker old work.`}`,
    }),
    'lightened-anyway': (given, reply) => ({
      title: given.now < 3 ? 'There is nothing to take away' : 'A recipe reaches it',
      text: `“${reply}”: ${given.now < 3 ? `the old work is only ${fixed(given.now)} from what she wants. A laser has its own risks; near enough is a good ending.` : `${worseWords(given)}, and that counts as reached. Lightening has its own risks: offer it where cover fails.`}`,
    }),
    'left-anyway': (given, reply) => ({
      title: 'She would still see it',
      text: `“${reply}”: ${where(given)} ${worseDate(given) < 3 ? 'It can be covered, so tell her so.' : 'Leaving it is her choice too, but say first that cover fails and lightening exists.'}`,
    }),
    'hid-under-skin-colour': (given, reply) => ({
      title: 'White and skin colour hide nothing for long',
      text: `“${reply}”: with white the table says ${fixed(given.white)}, ${given.white < 3 ? 'and that is the trap' : 'too far even so'}. Such layers look chalky, some darken under a laser, and they make the next step harder. Without white, ${worseWords(given)}.`,
    }),
    'hid-by-darkness': (given, reply) => ({
      title: 'Darkness is not cover',
      text: `“${reply}”: she asked for L* ${fixed(given.wanted[0])}, and the old work has L* ${fixed(given.today[0])}. A darker brow is another brow, and it leaves less room for everyone after you. ${begun(where(given))}`,
    }),
  },
  other: (given, reply) => ({ title: 'Not that', text: `“${reply}”: ${where(given)}` }),
};
