import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';
import type { skinClients } from './skinClients.ts';

type Client = (typeof skinClients)[number];
export type LeanSkin = Readonly<{ client: Client; l: number; a: number; b: number }>;

/** Two skins, each from three readings; each hue angle is known to so many degrees either way. */
export type HueLeanGiven = Readonly<{
  first: LeanSkin;
  second: LeanSkin;
  doubtDeg: number;
  asks: 'red' | 'yellow';
}>;
export const leanAnswers = ['first', 'second', 'not-shown'] as const;
export type LeanAnswer = (typeof leanAnswers)[number];

const words: Readonly<Record<LeanAnswer, (given: HueLeanGiven) => string>> = {
  first: ({ first }) => `The ${first.client}’s`,
  second: ({ second }) => `The ${second.client}’s`,
  'not-shown': () => 'A difference in hue is not shown',
};
const isAnswer = (code: string): code is LeanAnswer => leanAnswers.some((answer) => answer === code);
const angle = ({ a, b }: LeanSkin) => fixed((Math.atan2(b, a) * 180) / Math.PI);
const both = ({ first, second, doubtDeg }: HueLeanGiven) =>
  `Yellow over red, as an angle: the ${first.client} ${angle(first)}°, the ${second.client} ${angle(second)}°, each to ${fixed(doubtDeg, 0)}° either way.`;

export const hueLeanWords: ProblemWords<HueLeanGiven> = {
  name: 'Which way a skin leans',
  summary:
    'Tell by the hue angle which of two skins leans further to red or to yellow, or say that no difference is shown.',
  question: ({ asks }) => `Whose skin leans further to ${asks}?`,
  givens: ({ doubtDeg }) => [
    'Two clients, read in one lamp’s light before anything touched the skin. The table has the means of three readings.',
    `The hue angle is the angle whose tangent is b* over a*. A smaller one is redder. Each is sure to ${fixed(doubtDeg, 0)}° either way: call a difference shown only where the two do not meet.`,
  ],
  table: ({ first, second }) => ({
    caption: 'The skin beside the brow',
    head: ['Client', 'L*', 'a*', 'b*'],
    rows: [first, second].map(({ client, l, a, b }) => [client, fixed(l), fixed(a), fixed(b)]),
  }),
  label: 'Your answer',
  option: (code, given) => (isAnswer(code) ? words[code](given) : code),
  steps: {
    angles: {
      hint: 'Divide b* by a* for each, and ask for the angles. Lightness does not come in.',
      done: (v) => say(v, 'both'),
    },
    apart: {
      hint: 'How far apart are the two angles? Both have a doubt, so add the two doubts.',
      done: (v) =>
        `They are ${say(v, 'apart', 1)}° apart. The two doubts together make ${say(v, 'doubts', 0)}°: ${say(v, 'verdict')}.`,
    },
    decide: {
      hint: 'If it is shown: smaller is redder, larger is yellower.',
      done: (v) => `${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${both(given)}`,
  slips: {
    'larger-number': (given, reply) => ({
      title: 'That is the larger number, not the hue',
      text: `You chose “${reply}”: that skin has more ${given.asks}, but it may have more of the other as well. Hue is one over the other. ${both(given)}`,
    }),
    'deeper-skin': (given, reply) => ({
      title: 'That goes by lightness',
      text: `You chose “${reply}”. That skin is the deeper one, and lightness says nothing about hue. ${both(given)}`,
    }),
    'lighter-skin': (given, reply) => ({
      title: 'That goes by lightness',
      text: `You chose “${reply}”. That skin is the lighter one, and lightness says nothing about hue. ${both(given)}`,
    }),
    'hid-behind-doubt': (given, reply) => ({
      title: 'The doubt is smaller than that',
      text: `You chose “${reply}”. The two angles do not meet even with their doubts. ${both(given)}`,
    }),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${both(given)}` }),
};

/** For the steps: both angles, as one text. */
export const bothAngles = both;
