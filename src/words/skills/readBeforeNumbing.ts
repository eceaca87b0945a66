import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';
import type { skinClients } from './skinClients.ts';

export const readingNotes = ['before', 'wiped', 'numbed', 'drawn', 'window', 'not-written'] as const;
export type ReadingNote = (typeof readingNotes)[number];
export type NotedReading = Readonly<{ l: number; a: number; b: number; note: ReadingNote }>;
/** Three readings of one place beside the brow; at most one was spoiled. */
export type ReadBeforeGiven = Readonly<{
  who: (typeof skinClients)[number];
  readings: readonly [NotedReading, NotedReading, NotedReading];
}>;

export const spoiledAnswers = ['first', 'second', 'third', 'none'] as const;
export type SpoiledAnswer = (typeof spoiledAnswers)[number];
const isAnswer = (code: string): code is SpoiledAnswer => spoiledAnswers.some((answer) => answer === code);
const answerWords: Readonly<Record<SpoiledAnswer, string>> = {
  first: 'Leave out the first reading',
  second: 'Leave out the second reading',
  third: 'Leave out the third reading',
  none: 'Keep all three readings',
};

const noteWords: Readonly<Record<ReadingNote, string>> = {
  before: 'before anything, same lamp',
  wiped: 'just after wiping the skin dry',
  numbed: 'after the numbing cream came off',
  drawn: 'after drawing, beside the pencil line',
  window: 'before anything, but at the window and not under the lamp',
  'not-written': 'same lamp; nothing else is written',
};
const whyWords: Readonly<Record<ReadingNote, string>> = {
  before: '',
  wiped: 'Wiping reddens the skin for a while.',
  numbed: 'Numbing changes the colour of the skin for a while, paler or redder.',
  drawn: 'The pencil lends its own colour to the skin beside it.',
  window: 'Another light gives another colour: it cannot be put together with the other two.',
  'not-written':
    'It stands apart from the other two in redness by far more than a reading repeats. Something happened to that skin, or to that reading.',
};
const places = ['first', 'second', 'third'] as const;

/** Which reading was spoiled, and why; the same for every seed of its kind. */
export function spoiledOf({ readings }: ReadBeforeGiven): SpoiledAnswer {
  const named = readings.findIndex(({ note }) => note !== 'before' && note !== 'not-written');
  if (named >= 0) return places[named] ?? 'none';
  const [one, two, three] = readings;
  const gaps = [
    Math.min(Math.abs(one.a - two.a), Math.abs(one.a - three.a)),
    Math.min(Math.abs(two.a - one.a), Math.abs(two.a - three.a)),
    Math.min(Math.abs(three.a - one.a), Math.abs(three.a - two.a)),
  ];
  const far = gaps.findIndex((gap) => gap > 2.5);
  return places[far] ?? 'none';
}

function because(given: ReadBeforeGiven): string {
  const spoiled = spoiledOf(given);
  if (spoiled === 'none')
    return 'Nothing had touched the skin, the lamp was one, and the three lie as near as places beside one brow do. The spread belongs to the skin: it goes into the interval.';
  const reading = given.readings[places.indexOf(spoiled)];
  return reading ? `${whyWords[reading.note]} Write down that it was left out, and why.` : '';
}

export const readBeforeNumbingWords: ProblemWords<ReadBeforeGiven> = {
  name: 'Spot the spoiled reading',
  summary:
    'Three readings of one skin: find the one that was taken too late or in another light, or keep all three.',
  question: ({ who }) => `Which of the ${who}’s three readings do you leave out?`,
  givens: (given) => [
    'Three readings beside the brow. A reading of one place repeats to about half a unit; places beside one brow differ by a unit or two.',
    whenSaid(given),
  ],
  table: ({ readings }) => ({
    caption: 'Readings as they were written down',
    head: ['Reading', 'L*', 'a*', 'b*'],
    rows: readings.map(({ l, a, b }, i) => [places[i] ?? '', fixed(l), fixed(a), fixed(b)]),
  }),
  label: 'Your answer',
  option: (code) => (isAnswer(code) ? answerWords[code] : code),
  steps: {
    when: {
      hint: 'Read when and where each was taken, before you look at the numbers.',
      done: (v) => say(v, 'when'),
    },
    numbers: {
      hint: 'Then look at the redness, a*: is one far from both others?',
      done: (v) =>
        `Redness, in order: ${say(v, 'first', 1)}, ${say(v, 'second', 1)}, ${say(v, 'third', 1)}. ${say(v, 'verdict')}`,
    },
    decide: {
      hint: 'Leave out what was spoiled. Keep a plain spread.',
      done: (v) => `${say(v, 'answer')}. ${say(v, 'because')}`,
    },
  },
  right: (given, reply) => `${reply}. ${because(given)}`,
  slips: {
    'went-by-lightness': (given, reply) => ({
      title: 'That goes by the farthest number',
      text: `You chose “${reply}”: of the others, its lightness stands out most. A reading is not spoiled because it differs by a unit or two. ${because(given)}`,
    }),
    'kept-spoiled': (given, reply) => ({
      title: 'One of them was spoiled',
      text: `You chose “${reply}”. ${because(given)}`,
    }),
    'no-sign': (given, reply) => ({
      title: 'Nothing speaks against that one',
      text: `You chose “${reply}”. Neither its time nor its numbers speak against it. ${because(given)}`,
    }),
    'in-between': (given, reply) => ({
      title: 'That one lies between the others',
      text: `You chose “${reply}”. Its lightness lies between the other two. ${because(given)}`,
    }),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${because(given)}` }),
};

/** For the steps. */
export const whyLeftOut = because;
function whenSaid({ readings }: ReadBeforeGiven): string {
  return `${readings.map(({ note }, i) => `${(places[i] ?? '').replace(/^./, (letter) => letter.toUpperCase())}: ${noteWords[note]}.`).join(' ')}`;
}

/** For the first step: what the notes say against one of them. */
export function notesSay({ readings }: ReadBeforeGiven): string {
  const at = readings.findIndex(({ note }) => note !== 'before' && note !== 'not-written');
  const reading = readings[at];
  return reading
    ? `The notes speak against the ${places[at] ?? ''}: ${noteWords[reading.note]}.`
    : 'The notes speak against none of them.';
}
