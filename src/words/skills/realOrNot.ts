import { fewSeeMm } from '#lib/mapping/numbers/start.ts';
import { bands, type Band } from '#lib/mapping/compare/band.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, short } from './say.ts';

export type RealOrNotGiven = Readonly<{
  differenceMm: number;
  /** Technical error of one reading. */
  temMm: number;
  /** Readings a side that were averaged. */
  readings: number;
  /** What reading again does not shrink. */
  budgetMm: number;
  comparisons: number;
  /** Coverage factor for one comparison and for all of them. */
  kOne: number;
  kAll: number;
  mostSeeMm: number;
}>;

const bandWords: Readonly<Record<Band, (neededMm: string) => string>> = {
  'not-shown': (needed) => `Not shown to be real: that would take ${needed} mm`,
  'few-see': (needed) => `Real, but few people would see it: more than ${needed} mm is real`,
  'some-see': (needed) => `Real; some people would see it, not most: more than ${needed} mm is real`,
  'most-see': (needed) => `Real, and most people would see it: more than ${needed} mm is real`,
};

/**
 * An option's code: the verdict, and the smallest real difference behind it to a hundredth. "few-see@1.07" or
 * "equal".
 */
export function verdictCode(band: Band, neededMm: number): string {
  return `${band}@${neededMm.toFixed(2)}`;
}

/** The smallest real difference inside an option's code. */
export function neededIn(code: number | string | undefined): number | undefined {
  const [, needed] = /@(\d+\.\d\d)$/.exec(String(code)) ?? [];
  return needed === undefined ? undefined : Number(needed);
}

export const realOrNotWords: ProblemWords<RealOrNotGiven> = {
  name: 'Real or not shown',
  summary:
    'Decide whether a left–right difference is real, from your own reading error and the number of comparisons.',
  question: ({ differenceMm }) => `The left arch reads ${fixed(differenceMm)} mm higher. Is that real?`,
  givens: ({ temMm, readings, budgetMm, comparisons, kOne, kAll, mostSeeMm }) => [
    `Your technical error is ${fixed(temMm)} mm for one reading. Each side is the mean of ${readings} readings. Pencil, caliper and thread add ${short(budgetMm, 3)} mm that reading again does not shrink.`,
    `On this face you compare ${comparisons} things. The factor k is ${fixed(kOne, 2)} for a single comparison and ${fixed(kAll, 2)} for ${comparisons}. Most people notice from ${short(mostSeeMm)} mm.`,
  ],
  label: 'What do you say?',
  option: (code, { differenceMm }) => {
    const named = bands.find((name) => code.startsWith(`${name}@`));
    const band = named === 'few-see' && differenceMm > fewSeeMm ? 'some-see' : named;
    const needed = neededIn(code);
    if (code === 'equal') return 'The two sides are equal';
    return band && needed !== undefined ? bandWords[band](fixed(needed, 2)) : code;
  },
  steps: {
    'one-side': {
      hint: 'First one side. Averaging shrinks the reading error only: divide its square by the number of readings, add the square of the rest, take the root.',
      done: (v) =>
        `One side: √(${say(v, 'temMm')}² ÷ ${say(v, 'readings')} + ${say(v, 'budgetMm', 3)}²) = ${say(v, 'sideMm', 3)} mm.`,
    },
    'two-sides': {
      hint: 'A difference has two sides, and both are uncertain: multiply by the root of 2.',
      done: (v) => `Left minus right: √2 × ${say(v, 'sideMm', 3)} = ${say(v, 'bothMm', 3)} mm.`,
    },
    factor: {
      hint: 'Multiply by the factor for as many comparisons as you really make.',
      done: (v) =>
        `Smallest real difference for ${say(v, 'comparisons')} comparisons: ${say(v, 'k')} × ${say(v, 'bothMm', 3)} = ${say(v, 'neededMm')} mm.`,
    },
    verdict: {
      hint: 'Compare: is the difference larger than the smallest real one? If so, is it large enough for most people to see?',
      done: (v) => `The difference is ${say(v, 'differenceMm')} mm. ${say(v, 'answer')}.`,
    },
  },
  right: ({ differenceMm, mostSeeMm }, reply) => {
    if (reply.startsWith('Not'))
      return `${reply}. That does not make the sides equal: these readings cannot tell ${fixed(differenceMm)} mm from chance.`;
    return differenceMm < mostSeeMm
      ? `${reply}. Real does not mean that most people see it, nor that she wants it changed.`
      : `${reply}. It stands clear of your reading error, and it shows.`;
  },
  slips: {
    'k-of-one': ({ comparisons, kOne, kAll }, reply) => ({
      title: 'Close: that factor is for a single comparison',
      text: `You chose “${reply}”. It uses ${fixed(kOne, 2)}. You compare ${comparisons} things, and each is a chance for a false alarm: use ${fixed(kAll, 2)}.`,
    }),
    'no-root-two': (_, reply) => ({
      title: 'Close: that is the error of one side',
      text: `You chose “${reply}”. A difference has two uncertain sides. Multiply by the root of 2, about 1.41, before the factor.`,
    }),
    'one-reading': ({ readings }, reply) => ({
      title: 'Close: that forgets your repeated readings',
      text: `You chose “${reply}”. It is right for one reading a side. You took ${readings}, and their mean is steadier: divide the square of the technical error by ${readings}.`,
    }),
    'called-equal': ({ differenceMm }, reply) => ({
      title: '“Not shown” is not “equal”',
      text: `You chose “${reply}”. Nobody has shown that. A true difference of ${fixed(differenceMm)} mm may well be there; these readings cannot tell it from chance.`,
    }),
    'seen-is-real': ({ mostSeeMm }, reply) => ({
      title: 'What people see is another question',
      text: `You chose “${reply}”. From ${short(mostSeeMm)} mm most people notice. Whether a difference is real depends on your reading error, and that bar is much lower.`,
    }),
  },
  other: (_, reply) => ({
    title: 'Not that one',
    text: `You chose “${reply}”. Work out the smallest real difference first: one side, two sides, then the factor.`,
  }),
};
