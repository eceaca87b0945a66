import { bottleWords, isBottle } from '../bottleWords.ts';
import { fixed } from '../number.ts';
import type { skinClients } from './skinClients.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

type Three = readonly [number, number, number];
type Mix = Readonly<{ id: string; D65: Three; A: Three }>;

/** A wanted colour read under one lamp, and three mixes as predicted in that skin under two. */
export type LampGiven = Readonly<{
  client: (typeof skinClients)[number];
  lamp: 'D65' | 'A';
  wanted: Three;
  mixes: readonly [Mix, Mix, Mix];
}>;

const nameOf = (code: string) => (isBottle(code) ? bottleWords[code] : code);
const three = (values: Three) => values.map((value) => fixed(value)).join(' / ');
const inLight = (lamp: LampGiven['lamp']) => (lamp === 'D65' ? 'in daylight' : 'under the tungsten lamp');
const other = (lamp: LampGiven['lamp']) => (lamp === 'D65' ? 'A' : 'D65');
const read = (given: LampGiven, code: string, lamp = given.lamp) => {
  const mix = given.mixes.find(({ id }) => id === code);
  return mix ? three(mix[lamp]) : '';
};
const both = (given: LampGiven, code: string) =>
  `The wanted colour is ${three(given.wanted)} ${inLight(given.lamp)}; this mix is ${read(given, code)} in the same light`;
const codeOf = (given: LampGiven, reply: string) =>
  given.mixes.find(({ id }) => nameOf(id) === reply)?.id ?? '';

export const lampWords: ProblemWords<LampGiven> = {
  name: 'One lamp for both readings',
  summary: 'Choose the mix nearest to a wanted colour, comparing only what was read under one lamp.',
  question: ({ client }) => `Which mix comes nearest to what the ${client} wants?`,
  givens: ({ client, lamp }) => [
    `The ${client} wants the colour her brow had at six weeks last time. It was read ${inLight(lamp)}, and only so.`,
    'The table has three mixes as this model predicts them in her skin at six weeks, in daylight and under a tungsten lamp. Each cell has L*, a* and b*.',
  ],
  table: ({ lamp, wanted, mixes }) => ({
    caption: 'L* / a* / b*',
    head: ['What', 'daylight', 'tungsten lamp'],
    rows: [
      ['wanted', ...(['D65', 'A'] as const).map((each) => (each === lamp ? three(wanted) : 'not read'))],
      ...mixes.map(({ id, D65, A }) => [nameOf(id), three(D65), three(A)]),
    ],
  }),
  label: 'The mix',
  option: (code) => nameOf(code),
  steps: {
    lamp: {
      hint: 'Under which lamp was the wanted colour read? Use the numbers of that lamp only.',
      done: (v) => `The wanted colour was read ${say(v, 'light')}. The other column says nothing about it.`,
    },
    distances: {
      hint: 'For each mix: how far apart in L*, a* and b*? Square the three, add them, take the root.',
      done: (v) => `Distance from the wanted colour: ${say(v, 'distances')}.`,
    },
    choose: {
      hint: 'The smallest distance is the nearest mix.',
      done: (v) => `Nearest: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${both(given, codeOf(given, reply))}.`,
  slips: {
    'across-lamps': (given, reply) => ({
      title: 'That compares two lamps',
      text: `You chose “${reply}”. Its numbers ${inLight(other(given.lamp))}, ${read(given, codeOf(given, reply), other(given.lamp))}, do look like the wanted ones. But the wanted ones were read ${inLight(given.lamp)}. ${both(given, codeOf(given, reply))}.`,
    }),
    'too-red': (given, reply) => ({
      title: 'That mix is redder',
      text: `You chose “${reply}”. ${both(given, codeOf(given, reply))}: its a* is too high, and another mix is nearer.`,
    }),
    'too-little-red': (given, reply) => ({
      title: 'That mix is less red',
      text: `You chose “${reply}”. ${both(given, codeOf(given, reply))}: its a* is too low, and another mix is nearer.`,
    }),
  },
  other: (given, reply) => ({
    title: 'Not that one',
    text: `You chose “${reply}”. ${both(given, codeOf(given, reply))}.`,
  }),
};
