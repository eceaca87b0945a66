import { fixed } from '../number.ts';
import { hueBottleWords } from '../whichHue.ts';
import type { skinClients } from './skinClients.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

type Three = readonly [number, number, number];

/**
 * L*, a*, b* of the bare skin and of the old work, and the change that one small dose of each bottle makes.
 */
export type NeutraliseDirectionGiven = Readonly<{
  client: (typeof skinClients)[number];
  old: string;
  skin: Three;
  today: Three;
  bottles: readonly Readonly<{ id: string; move: Three }>[];
}>;

/** From the old work to the bare skin. */
export function wayBack({ skin, today }: NeutraliseDirectionGiven): Three {
  return [skin[0] - today[0], skin[1] - today[1], skin[2] - today[2]];
}

/** A move by its names. */
export function hueMoveOf([l, a, b]: Three): Readonly<{ l: number; a: number; b: number }> {
  return { l, a, b };
}

const isBottle = (code: string): code is keyof typeof hueBottleWords => Object.hasOwn(hueBottleWords, code);
const nameOf = (code: string) => (isBottle(code) ? hueBottleWords[code] : code);
const signed = (value: number) => (value > 0 ? `+${fixed(value)}` : fixed(value));
const toward = (a: number, b: number) =>
  `${a >= 0 ? 'redder' : 'less red'} by ${fixed(Math.abs(a))} and ${b >= 0 ? 'yellower' : 'less yellow'} by ${fixed(Math.abs(b))}`;
const wayWords = (given: NeutraliseDirectionGiven) => {
  const [, a, b] = wayBack(given);
  return `The way back to her skin is ${toward(a, b)}.`;
};
const moveWords = (given: NeutraliseDirectionGiven, code: string) => {
  const [l = 0, a = 0, b = 0] = given.bottles.find(({ id }) => id === code)?.move ?? [];
  return `This bottle goes ${toward(a, b)}, at a price of ${signed(l)} in L*.`;
};
const slip = (code: string, title: string) => (given: NeutraliseDirectionGiven, reply: string) => ({
  title,
  text: `You chose “${reply}”. ${moveWords(given, code)} ${wayWords(given)} Another bottle points that way more nearly.`,
});

export const neutraliseDirectionWords: ProblemWords<NeutraliseDirectionGiven> = {
  name: 'Which bottle takes the old hue away',
  summary:
    'Choose the bottle whose small dose moves old pigment most nearly towards the hue of the bare skin.',
  question: ({ client, old }) => `Which bottle takes the ${client}’s ${old} away?`,
  givens: () => [
    'The table has the bare skin, the old work today, and how one small dose of each bottle would change it at six weeks, in this model.',
    'Judge the direction in a* and b* only. How far it goes is a question of dose. What it costs in L* comes afterwards.',
  ],
  table: ({ skin, today, bottles }) => ({
    caption: 'Colours first, then changes',
    head: ['What', 'L*', 'a*', 'b*'],
    rows: [
      ['bare skin', ...skin.map((value) => fixed(value))],
      ['old work today', ...today.map((value) => fixed(value))],
      ...bottles.map(({ id, move }) => [nameOf(id), ...move.map(signed)]),
    ],
  }),
  label: 'The bottle',
  option: (code) => nameOf(code),
  steps: {
    way: {
      hint: 'Take the old work from the bare skin, in a* and in b*. That is the way back.',
      done: (v) => `The way back: a* ${signed(Number(v.a))}, b* ${signed(Number(v.b))}.`,
    },
    cosines: {
      hint: 'Which move has nearly the same share of a* to b*, with the same signs? The cosine of the angle says it in one number: one is the same way, nought is square to it.',
      done: (v) => `Cosine with the way back: ${say(v, 'cosines')}.`,
    },
    choose: {
      hint: 'The largest cosine points back most nearly.',
      done: (v) => `Nearest to the way back: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) =>
    `${reply}. ${wayWords(given)} Hue is half of the question: look at what it costs in L* before you mix.`,
  slips: {
    'chose-yellow': slip('yellow-oxide-some-white', 'Yellow is not the whole way here'),
    'chose-orange': slip('orange', 'Orange is not the way here'),
    'chose-red': slip('red-oxide-some-yellow', 'Red is not the way here'),
    'chose-brown': slip('dark-brown-iron', 'This brown darkens more than it turns the hue'),
    'chose-black': slip('black-iron', 'Black hides by darkness'),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${wayWords(given)}` }),
};
