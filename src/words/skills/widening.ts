import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

/** What a brow's strokes cover on the day, and how wide they are then and healed. */
export type WideningGiven = Readonly<{
  freshPercent: number;
  freshMm: number;
  healedMm: number;
  isCrossing: boolean;
}>;

export const wideningWords: ProblemWords<WideningGiven> = {
  name: 'Widening',
  summary: 'From the share covered on the day, work out the share once the strokes have widened.',
  question: () => 'How much of the skin is covered once they have widened, in per cent?',
  givens: ({ freshPercent, freshMm, healedMm, isCrossing }) => [
    `Fresh, the ferry pilot’s strokes are ${short(freshMm)} mm wide and cover ${freshPercent} % of her brow. ${isCrossing ? 'They cross each other as chance has it.' : 'They lie side by side. None crosses another.'}`,
    `At the next visit the same strokes measure ${short(healedMm)} mm. Nothing was added.`,
  ],
  label: 'Skin covered',
  option: (code) => code,
  steps: {
    ratio: {
      hint: 'How many times as wide is a stroke now? Divide, do not subtract.',
      done: (v) =>
        `The strokes are ${say(v, 'healedMm')} ÷ ${say(v, 'freshMm')} = ${say(v, 'ratio', 3)} times as wide.`,
    },
    times: {
      hint: 'Side by side, the share grows as many times.',
      done: (v) =>
        `Side by side the share grows as the width: ${say(v, 'freshPercent')} × ${say(v, 'ratio', 3)} = ${sayTenths(v, 'answer')} %.`,
    },
    bare: {
      hint: 'Strokes that cross cover skin twice. Work with the bare share.',
      done: (v) => `Bare on the day: 1 − ${say(v, 'freshPercent')} ÷ 100 = ${say(v, 'bare')}.`,
    },
    power: {
      hint: 'The bare share is raised to the power of that many times.',
      done: (v) =>
        `Bare now: ${say(v, 'bare')} to the power of ${say(v, 'ratio', 3)} is ${say(v, 'left', 4)}. Covered is the rest: ${sayTenths(v, 'answer')} %.`,
    },
  },
  right: ({ freshPercent }, reply) => `${reply}, up from ${freshPercent} %: the same strokes, only wider.`,
  slips: {
    'other-way': ({ isCrossing }, reply) =>
      isCrossing
        ? {
            title: 'Close: you forgot the crossings',
            text: `${reply} lets the share grow as the width does. These strokes cross: part of the new width falls on skin that is coloured already. Raise the bare share to that power.`,
          }
        : {
            title: 'Close: that is for strokes that cross',
            text: `${reply} lets new width fall on coloured skin. These strokes lie side by side. The share grows as the width does.`,
          },
    'added-widths': ({ freshMm, healedMm }, reply) => ({
      title: 'You added the two widths',
      text: `${reply} counts the fresh stroke and the wide one. It is the same stroke: ${short(healedMm)} mm in place of ${short(freshMm)} mm.`,
    }),
    'added-per-cent': ({ freshPercent, freshMm, healedMm }, reply) => ({
      title: 'Per cent of what?',
      text: `${reply} adds the growth of the width, ${short(100 * (healedMm / freshMm - 1), 0)} %, to ${freshPercent} %. The growth is per cent of the width. It multiplies the share.`,
    }),
    'gain-only': ({ freshPercent }, reply) => ({
      title: 'Close: that is only what came on top',
      text: `${reply} is what widening added. What was there before, ${freshPercent} %, is still there.`,
    }),
  },
  other: ({ freshMm, healedMm }, reply) => ({
    title: 'Not yet',
    text: `You have ${reply}. Start with how many times as wide the strokes are: ${short(healedMm)} ÷ ${short(freshMm)}.`,
  }),
};
