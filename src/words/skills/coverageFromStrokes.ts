import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

/** Strokes in one brow. */
export type CoverageFromStrokesGiven = Readonly<{
  count: number;
  lengthMm: number;
  widthMm: number;
  areaMm2: number;
  crossing: boolean;
}>;

export const coverageFromStrokesWords: ProblemWords<CoverageFromStrokesGiven> = {
  name: 'Coverage from strokes',
  summary: 'Work out how much of a brow’s skin its strokes cover, side by side or crossing.',
  question: () => 'How much of the brow’s skin is covered, in per cent?',
  givens: ({ count, lengthMm, widthMm, areaMm2, crossing }) => [
    `The potter’s brow measures ${areaMm2} mm². It holds ${count} strokes, each ${short(lengthMm)} mm long and ${short(widthMm)} mm wide.`,
    crossing
      ? 'The strokes cross each other as chance has it.'
      : 'The strokes lie side by side. None crosses another.',
  ],
  label: 'Skin covered',
  option: (code) => code,
  steps: {
    one: {
      hint: 'Begin with one stroke: what area does it colour?',
      done: (v) => `One stroke: ${say(v, 'lengthMm')} × ${say(v, 'widthMm')} = ${say(v, 'one', 3)} mm².`,
    },
    all: {
      hint: 'Add up all strokes, and divide by the area of the brow.',
      done: (v) =>
        `All: ${say(v, 'count')} × ${say(v, 'one', 3)} = ${say(v, 'sum')} mm². Over the brow: ${say(v, 'sum')} ÷ ${say(v, 'areaMm2')} = ${say(v, 'load', 4)}.`,
    },
    apart: {
      hint: 'Side by side nothing is coloured twice. Write the share in per cent.',
      done: (v) =>
        `Nothing is coloured twice, so the share is ${say(v, 'load', 4)}: ${sayTenths(v, 'answer')} %.`,
    },
    crossing: {
      hint: 'Where strokes cross, skin is coloured twice. The bare share is e to minus that number.',
      done: (v) =>
        `Bare: e to minus ${say(v, 'load', 4)} is ${say(v, 'bare', 4)}. Covered is the rest: ${sayTenths(v, 'answer')} %.`,
    },
  },
  right: ({ crossing }, reply) =>
    crossing
      ? `${reply}: where strokes cross, skin is coloured twice, so less is covered than their areas add up to.`
      : `${reply}: side by side the areas simply add up.`,
  slips: {
    'other-way': ({ crossing }, reply) =>
      crossing
        ? {
            title: 'Close: you forgot the crossings',
            text: `${reply} adds the areas up as if none overlapped. These strokes cross, and what lies under two of them counts once. Take e to minus your number for the bare share.`,
          }
        : {
            title: 'Close: that is for strokes that cross',
            text: `${reply} takes crossings off. These strokes lie side by side, so nothing is coloured twice. The areas add up.`,
          },
    bare: (_, reply) => ({
      title: 'Close: that is the bare skin',
      text: `${reply} is what stays bare. Covered is the rest, up to a hundred.`,
    }),
    'as-share': (_, reply) => ({
      title: 'Close: that is the share, not per cent',
      text: `${reply} reads as less than one in a hundred. Multiply the share by 100.`,
    }),
    'no-width': (_, reply) => ({
      title: 'The width is missing',
      text: `${reply} comes from count and length alone. A stroke colours its length times its width.`,
    }),
  },
  other: ({ lengthMm, widthMm }, reply) => ({
    title: 'Not yet',
    text: `You have ${reply}. Start with one stroke, ${short(lengthMm)} × ${short(widthMm)} mm². Then all of them, over the area of the brow.`,
  }),
};
