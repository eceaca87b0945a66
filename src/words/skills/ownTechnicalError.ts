import { fixed, signed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths } from './say.ts';

/** Heights on one practice sheet, each read twice. */
export type OwnTechnicalErrorGiven = Readonly<{
  pairs: readonly Readonly<{ firstMm: number; secondMm: number }>[];
}>;

export const ownTechnicalErrorWords: ProblemWords<OwnTechnicalErrorGiven> = {
  name: 'Own technical error',
  summary: 'Work out how wrong one reading is from heights that were read twice.',
  question: () => 'How wrong is one of her readings?',
  givens: ({ pairs }) => [
    `An apprentice reads ${pairs.length} brow heights on a practice sheet by eye, without marking the points first. Then she covers the numbers and reads them all again.`,
    'A few pairs only show the sum. For an error of your own, take twenty or more.',
  ],
  table: ({ pairs }) => ({
    caption: 'Readings, mm',
    head: ['Height', 'First', 'Second'],
    rows: pairs.map(({ firstMm, secondMm }, i) => [String(i + 1), fixed(firstMm), fixed(secondMm)]),
  }),
  label: 'Technical error',
  option: (code) => code,
  steps: {
    differences: {
      hint: 'Subtract each first reading from its second.',
      done: (v) => `Second minus first: ${say(v, 'differences')} mm.`,
    },
    squares: {
      hint: 'Square each difference, so that the sign drops out, and add them up.',
      done: (v) => `Squares: ${say(v, 'squares')}. Together ${say(v, 'sum')}.`,
    },
    halve: {
      hint: 'Each difference holds the error of two readings: divide by twice the number of pairs.',
      done: (v) =>
        `Divide by 2 × ${say(v, 'count')}: ${say(v, 'sum')} ÷ ${say(v, 'twice')} = ${say(v, 'square')}.`,
    },
    root: {
      hint: 'Take the root.',
      done: (v) => `The root of ${say(v, 'square')} is ${sayTenths(v, 'answerMm')} mm.`,
    },
  },
  right: (_, reply) =>
    `${reply}: two readings of one thing differ by chance, and this is the spread of a single one.`,
  slips: {
    'forgot-two': ({ pairs }, reply) => ({
      title: 'Close: that is the spread of a difference',
      text: `${reply} divides by ${pairs.length}. A difference holds the error of two readings. Divide by twice as much, ${2 * pairs.length}, before the root.`,
    }),
    'all-readings': (_, reply) => ({
      title: 'That is how different the heights are',
      text: `${reply} is the spread of all readings taken together. It holds the heights themselves. Compare each reading only with its own partner.`,
    }),
    'mean-difference': (_, reply) => ({
      title: 'Close: that is the mean size of a difference',
      text: `${reply} leaves the signs out and takes the mean. Square the differences first, then divide by twice the number of pairs, then take the root.`,
    }),
    repeatability: (_, reply) => ({
      title: 'Close: that is the repeatability',
      text: `${reply} is how far two readings may lie apart in 95 of 100 cases. The technical error is the spread of one: divide by 2.77.`,
    }),
    'no-root': (_, reply) => ({
      title: 'Close: the root is missing',
      text: `${reply} is still a square. Take its root, and the number is in millimetres again.`,
    }),
  },
  other: ({ pairs }, reply) => ({
    title: 'Not yet',
    text: `You have ${reply}. Start with the differences, ${pairs.map(({ firstMm, secondMm }) => signed(secondMm - firstMm)).join(', ')}. Square, add, divide by ${2 * pairs.length}, root.`,
  }),
};
