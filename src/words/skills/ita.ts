import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths } from './say.ts';
import type { skinClients } from './skinClients.ts';

/** One reading of one skin. */
export type ItaGiven = Readonly<{
  client: (typeof skinClients)[number];
  skinL: number;
  skinA: number;
  skinB: number;
}>;

const over = ({ skinL, skinB }: ItaGiven) => fixed((skinL - 50) / skinB, 2);

export const itaWords: ProblemWords<ItaGiven> = {
  name: 'Typology angle',
  summary: 'Work out the typology angle of a skin from its lightness and its yellow.',
  question: ({ client }) => `What is the typology angle (ITA) of the ${client}’s skin?`,
  givens: ({ skinL, skinA, skinB }) => [
    `Read beside the brow, in daylight, before anything touched it: L* ${fixed(skinL)}, a* ${fixed(skinA)}, b* ${fixed(skinB)}.`,
    'The angle is the arctangent of lightness minus 50, over yellow. Set your calculator to degrees; the key is often written tan with a small raised minus one.',
  ],
  label: 'Your answer',
  option: (code) => code,
  steps: {
    above: {
      hint: 'How far does the lightness lie above 50? Below 50 it is less than nought.',
      done: (v) => `${sayTenths(v, 'skinL')} − 50 = ${sayTenths(v, 'above')}.`,
    },
    over: {
      hint: 'Divide that by the yellow, b*. Redness does not come in.',
      done: (v) => `${sayTenths(v, 'above')} ÷ ${sayTenths(v, 'skinB')} = ${say(v, 'over', 3)}.`,
    },
    angle: {
      hint: 'Ask for the angle with that tangent, in degrees.',
      done: (v) => `The arctangent of ${say(v, 'over', 3)}: ${sayTenths(v, 'angle')} °.`,
    },
  },
  right: ({ skinA }, reply) =>
    `${reply}. Redness, a* ${fixed(skinA)}, did not come in: the angle says nothing about it. Write the hue angle beside it.`,
  slips: {
    'forgot-fifty': (_, reply) => ({
      title: 'Close: 50 is missing',
      text: `${reply} divides the whole lightness by the yellow. Take 50 away first: the angle is counted from middle grey.`,
    }),
    'used-red': (given, reply) => ({
      title: 'That divides by the red',
      text: `${reply} divides by a*. The typology angle takes lightness and yellow, b* ${fixed(given.skinB)}, and leaves red out.`,
    }),
    'upside-down': (given, reply) => ({
      title: 'Close: the fraction stands on its head',
      text: `${reply} divides the yellow by the lightness above 50. It goes the other way round: ${over(given)}.`,
    }),
    'no-angle': (given, reply) => ({
      title: 'One step short',
      text: `${reply} is the fraction itself, ${over(given)}. Ask for the angle with that tangent.`,
    }),
    'hue-angle': (_, reply) => ({
      title: 'That is the hue angle',
      text: `${reply} compares yellow with red. It belongs beside the typology angle, but the question asks for lightness against yellow.`,
    }),
  },
  other: (_, reply) => ({
    title: 'Not there yet',
    text: `${reply} does not follow from any way of working we know. Take 50 from L*, divide by b*, then ask for the angle in degrees.`,
  }),
};
