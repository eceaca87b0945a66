import { fixed } from '../number.ts';
import type { coverClients } from './doNotCover.ts';
import type { Feedback, ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

type Three = readonly [number, number, number];

/** A mix at a dose, and what it adds to a* and b* of the old work. */
export type GivenMix = Readonly<{
  id: 'yellow' | 'little-black' | 'equal-black' | 'much-black' | 'with-orange';
  dose: number;
  move: readonly [number, number];
}>;
export type GreenTrapGiven = Readonly<{
  client: (typeof coverClients)[number];
  old: string;
  skin: Three;
  today: Three;
  mixes: readonly GivenMix[];
}>;

/** a* after the mix, to a tenth. */
export const aAfter = ({ today }: Pick<GreenTrapGiven, 'today'>, { move }: GivenMix): number =>
  Math.round(10 * (today[1] + move[0])) / 10;

const mixWords = {
  yellow: 'Yellow oxide alone',
  'little-black': 'Three drops yellow, one iron black',
  'equal-black': 'Yellow and iron black, equal drops',
  'much-black': 'One drop yellow, two iron black',
  'with-orange': 'Yellow, iron black and orange, equal drops',
} as const;
const signed = (value: number) => (value > 0 ? `+${fixed(value)}` : fixed(value));
const option = (code: string, { mixes }: GreenTrapGiven) => {
  const mix = mixes.find(({ id }) => id === code);
  return mix ? `${mixWords[mix.id]}, dose ${fixed(mix.dose)}` : 'None of these';
};
/** "0.0 + 0.8 = 0.8" */
export const sumWords = (given: GreenTrapGiven, mix: GivenMix): string =>
  `${fixed(given.today[1])} ${mix.move[0] < 0 ? '−' : '+'} ${fixed(Math.abs(mix.move[0]))} = ${fixed(aAfter(given, mix))}`;

/**
 * Why this mix ends below nought: it starts there and is given too little red, or black takes the red that
 * was there.
 */
const whyGreen = ({ today }: GreenTrapGiven, { id }: GivenMix): string => {
  if (id === 'yellow') return 'So little yellow brings too little red to leave the green.';
  return today[1] < 0
    ? 'It starts below nought, and with black in it the mix brings too little red.'
    : 'The black takes red out, and yellow has little to give.';
};

const slip =
  (code: GivenMix['id'], title: string, why: string) =>
  (given: GreenTrapGiven, reply: string): Feedback => {
    const mix = given.mixes.find(({ id }) => id === code);
    return {
      title,
      text: `“${reply}” gives a* ${mix ? sumWords(given, mix) : ''}: not below nought. ${why}`,
    };
  };

export const greenTrapWords: ProblemWords<GreenTrapGiven> = {
  name: 'The green trap',
  summary:
    'Find the mix of yellow and black, and the dose, that leaves old work green; or see that none does.',
  question: ({ client, old }) => `Which mix leaves the ${client}’s ${old} old work green?`,
  givens: () => [
    'Green is a* below nought. The table has colours first, then what each mix at its dose adds to the old work at six weeks, in this model.',
    'Yellow by itself, beside warm skin, is olive. Here the question is green.',
  ],
  table: ({ skin, today, mixes }) => ({
    caption: 'Colours first, then changes',
    head: ['What', 'a*', 'b*'],
    rows: [
      ['Bare skin', fixed(skin[1]), fixed(skin[2])],
      ['Old work today', fixed(today[1]), fixed(today[2])],
      ...mixes.map(({ id, dose, move }) => [`${mixWords[id]}, dose ${fixed(dose)}`, ...move.map(signed)]),
    ],
  }),
  label: 'The mix',
  option,
  steps: {
    add: {
      hint: 'Add each change in a* to today’s a*.',
      done: (v) => `a* after each mix, in the order of the table: ${say(v, 'sums')}.`,
    },
    decide: {
      hint: 'Which sum lies below nought? Perhaps none.',
      done: (v) => `Which lies below nought? ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => {
    const fallen = given.mixes.find((mix) => aAfter(given, mix) < 0);
    return fallen
      ? `${reply}: yes, a* ${sumWords(given, fallen)}. ${whyGreen(given, fallen)} A part of orange, or a brown, keeps such a mix out of the trap.`
      : `${reply}: yes. Every a* stays above nought. Her skin has a* ${fixed(given.skin[1])}, so it may still look olive beside it.`;
  },
  slips: {
    'blamed-yellow': slip(
      'yellow',
      'Olive, not green',
      'Yellow oxide holds a little red of its own. It brings yellow and leaves red behind: beside skin, that is olive.',
    ),
    'blamed-little-black': slip(
      'little-black',
      'Too little black for that',
      'Three drops of yellow still bring more red than one drop of iron black takes.',
    ),
    'blamed-equal-black': slip(
      'equal-black',
      'Not at this dose, not here',
      'Equal drops are where the trap opens on light to tan skin at a high dose. Do the sum each time.',
    ),
    'blamed-much-black': slip(
      'much-black',
      'Dark is not green',
      'Iron black takes red out where there is red to take. Do the sum each time.',
    ),
    'blamed-orange': slip(
      'with-orange',
      'The orange keeps red in',
      'A part of orange is what holds such a mix out of the trap.',
    ),
    'saw-no-trap': (given, reply) => {
      const fallen = given.mixes.find((mix) => aAfter(given, mix) < 0);
      return {
        title: 'One of them falls in',
        text: `“${reply}”: but ${fallen ? `“${option(fallen.id, given)}” gives a* ${sumWords(given, fallen)}` : ''}. Below nought is green.`,
      };
    },
  },
  other: (_, reply) => ({
    title: 'Not that one',
    text: `You chose “${reply}”. Add each change in a* to today’s a*, and look for a sum below nought.`,
  }),
};
