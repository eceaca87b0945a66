import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths } from './say.ts';

/**
 * Two bottles and their drops; asked is the drops of the first for one of the second, or the second's share
 * of the mix.
 */
export type DropsToRatioGiven = Readonly<{
  first: string;
  second: string;
  firstDrops: number;
  secondDrops: number;
  asks: 'ratio' | 'share';
}>;

const drops = (count: number) => (count === 1 ? '1 drop' : `${count} drops`);

export const dropsToRatioWords: ProblemWords<DropsToRatioGiven> = {
  name: 'Drops to ratio',
  summary: 'Turn drops into a ratio, or into a share of the whole mix, without mixing up the two.',
  question: ({ first, second, asks }) =>
    asks === 'ratio'
      ? `How many drops of ${first} are there for each drop of ${second}?`
      : `What share of the whole mix is ${second}, in per cent?`,
  givens: ({ first, second, firstDrops, secondDrops }) => [
    `The lock keeper’s card says: ${drops(firstDrops)} ${first}, ${drops(secondDrops)} ${second}.`,
    'Both bottles give drops of the same size.',
  ],
  label: 'Your answer',
  option: (code) => code,
  steps: {
    order: {
      hint: 'Which bottle is counted, and for one drop of which other? That other one stands below the line.',
      done: (v) => `Counted are ${say(v, 'firstDrops')}, for ${say(v, 'secondDrops')} of the other.`,
    },
    ratio: {
      hint: 'Divide the first number by the second.',
      done: (v) => `${say(v, 'firstDrops')} ÷ ${say(v, 'secondDrops')} = ${sayTenths(v, 'answer')} drops.`,
    },
    whole: {
      hint: 'A share is a part of the whole. Add all drops first.',
      done: (v) => `All drops: ${say(v, 'firstDrops')} + ${say(v, 'secondDrops')} = ${say(v, 'whole')}.`,
    },
    share: {
      hint: 'Divide by the whole, then take it times a hundred.',
      done: (v) => `${say(v, 'secondDrops')} ÷ ${say(v, 'whole')} × 100 = ${sayTenths(v, 'answer')} %.`,
    },
  },
  right: ({ asks }, reply) =>
    asks === 'ratio'
      ? `${reply} for each one. Twice as many drops of both would be the same ratio, and the same colour.`
      : `${reply}: a part of all the drops, so the two shares add up to a hundred.`,
  slips: {
    inverted: ({ first, second, asks }, reply) => ({
      title: 'Close: that is the other way round',
      text:
        asks === 'ratio'
          ? `${reply} is the ${second} for each drop of ${first}. Asked is ${first} for each drop of ${second}.`
          : `${reply} is the share of ${first}. Asked is ${second}, the rest.`,
    }),
    'share-for-ratio': ({ firstDrops, secondDrops, asks }, reply) => ({
      title: asks === 'ratio' ? 'Close: that is a share, not a ratio' : 'Close: that is a ratio, not a share',
      text:
        asks === 'ratio'
          ? `${reply} divides by all ${firstDrops + secondDrops} drops. A ratio sets one bottle against the other: divide by ${secondDrops}.`
          : `${reply} divides by the ${firstDrops} of the other bottle. A share is part of the whole: divide by all ${firstDrops + secondDrops}.`,
    }),
    'whole-for-one': ({ firstDrops, secondDrops, asks }, reply) =>
      asks === 'ratio'
        ? {
            title: 'Close: you counted the whole mix',
            text: `${reply} counts all ${firstDrops + secondDrops} drops for each of the ${secondDrops}. Count the ${firstDrops} only.`,
          }
        : {
            title: 'Close: write it in per cent',
            text: `${reply} is the share as a part of one. In per cent it is a hundred times as much.`,
          },
  },
  other: ({ firstDrops, secondDrops, asks }, reply) => ({
    title: 'Not yet',
    text: `You have ${reply}. ${asks === 'ratio' ? `Divide ${fixed(firstDrops, 0)} by ${fixed(secondDrops, 0)}.` : `Divide ${fixed(secondDrops, 0)} by all ${fixed(firstDrops + secondDrops, 0)} drops, and take it times a hundred.`}`,
  }),
};
