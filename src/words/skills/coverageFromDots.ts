import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

/** Dots in each square millimetre, and how far each is across. */
export type CoverageFromDotsGiven = Readonly<{ dotsPerMm2: number; acrossMm: number }>;

export const coverageFromDotsWords: ProblemWords<CoverageFromDotsGiven> = {
  name: 'Coverage from dots',
  summary: 'Work out how much skin dots cover, from how many there are and how far they are across.',
  question: () => 'How much of the skin do the dots cover, in per cent?',
  givens: ({ dotsPerMm2, acrossMm }) => [
    `Under a lens you count the dots in the bell-ringer’s shaded brow: ${short(dotsPerMm2)} in each square millimetre on average.`,
    `A dot measures ${short(acrossMm)} mm from edge to edge. The dots lie as chance has it: some overlap.`,
  ],
  label: 'Skin covered',
  option: (code) => code,
  steps: {
    disc: {
      hint: 'Begin with one dot: a disc. Its area goes with the square of its radius.',
      done: (v) =>
        `Radius: half of ${say(v, 'acrossMm')} is ${say(v, 'radiusMm', 3)} mm. One dot: 3.1416 × ${say(v, 'radiusMm', 3)} × ${say(v, 'radiusMm', 3)} = ${say(v, 'disc', 4)} mm².`,
    },
    all: {
      hint: 'Add up the dots of one square millimetre.',
      done: (v) =>
        `All dots of a square millimetre: ${say(v, 'dots')} × ${say(v, 'disc', 4)} = ${say(v, 'load', 4)}.`,
    },
    overlap: {
      hint: 'Dots overlap by chance. The bare share is e to minus that number.',
      done: (v) =>
        `Bare: e to minus ${say(v, 'load', 4)} is ${say(v, 'bare', 4)}. Covered is the rest: ${sayTenths(v, 'answer')} %.`,
    },
  },
  right: (_, reply) => `${reply}: the dots’ areas add up to more, but some lie over each other.`,
  slips: {
    radius: ({ acrossMm }, reply) => ({
      title: 'Close: you took the diameter for the radius',
      text: `${reply} comes from discs four times too large. ${short(acrossMm)} mm is from edge to edge. Halve it before you square it.`,
    }),
    'no-overlap': (_, reply) => ({
      title: 'Close: you forgot the overlaps',
      text: `${reply} adds the dots up as if none lay over another. They lie as chance has it. Take e to minus your number for the bare share.`,
    }),
    square: (_, reply) => ({
      title: 'Close: those are squares',
      text: `${reply} takes each dot as a square, diameter times diameter. A disc in that square has about three quarters of its area.`,
    }),
    bare: (_, reply) => ({
      title: 'Close: that is the bare skin',
      text: `${reply} is what stays bare. Covered is the rest, up to a hundred.`,
    }),
  },
  other: ({ dotsPerMm2, acrossMm }, reply) => ({
    title: 'Not yet',
    text: `You have ${reply}. One dot is a disc with half of ${short(acrossMm)} mm as its radius. There are ${short(dotsPerMm2)} in each square millimetre.`,
  }),
};
