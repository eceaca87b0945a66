import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

/**
 * Two points a span apart, and either the tilt of the line over them or the height difference that was read.
 */
export type TiltGiven = Readonly<{
  between: 'fronts' | 'arches' | 'tails';
  spanMm: number;
}> &
  Readonly<{ asks: 'height'; tiltDeg: number } | { asks: 'tilt'; heightMm: number }>;

const pointWords = { fronts: 'tops of the two fronts', arches: 'two arches', tails: 'two tails' } as const;
const span = ({ spanMm }: TiltGiven) => short(spanMm, 1);

export const tiltWords: ProblemWords<TiltGiven> = {
  name: 'Tilt of a level line',
  summary:
    'Say how many millimetres a tilted line fakes between two points, or which tilt would explain what was read.',
  question: (given) =>
    given.asks === 'height'
      ? `What height difference does a tilt of ${fixed(given.tiltDeg)}° fake between the ${given.between}?`
      : `Which tilt alone would explain ${fixed(given.heightMm)} mm between the ${given.between}?`,
  givens: (given) => [
    `The ${pointWords[given.between]} are ${span(given)} mm apart, and on the face they are truly level.`,
    given.asks === 'height'
      ? `The thread you took for level is off by ${fixed(given.tiltDeg)}°. The sine of one degree is 0.01745; for a few degrees, take it as many times.`
      : `Measured from your thread, one of them stands ${fixed(given.heightMm)} mm higher. The sine of one degree is 0.01745; for a few degrees, divide by it.`,
  ],
  label: 'Your answer',
  option: (code) => code,
  steps: {
    sine: {
      hint: 'A tilt is a slope: so many millimetres up for each millimetre along. That is the sine of the angle.',
      done: (v) =>
        `Sine of ${sayTenths(v, 'tiltDeg')}° = ${say(v, 'sine', 4)}: millimetres up for each millimetre along.`,
    },
    height: {
      hint: 'Multiply by the whole distance from one point to the other.',
      done: (v) => `${say(v, 'spanMm', 1)} mm × ${say(v, 'sine', 4)} = ${sayTenths(v, 'heightMm')} mm.`,
    },
    slope: {
      hint: 'How many millimetres up for each millimetre along? Divide the height by the whole distance.',
      done: (v) =>
        `Slope: ${sayTenths(v, 'heightMm')} ÷ ${say(v, 'spanMm', 1)} = ${say(v, 'sine', 4)}. That is the sine of the tilt.`,
    },
    angle: {
      hint: 'Which angle has that sine? Divide by the sine of one degree.',
      done: (v) => `${say(v, 'sine', 4)} ÷ 0.01745: the tilt is ${sayTenths(v, 'tiltDeg')} °.`,
    },
  },
  right: (given, reply) =>
    given.asks === 'height'
      ? `${reply}, from a line that looks almost level. Hold the line first, then believe the height.`
      : `${reply} is enough to make all of it. A thread can be that far off and look straight.`,
  slips: {
    'half-span': (given, reply) => ({
      title: 'Close: that is half the distance',
      text: `${reply} counts from the midline to one point. One end of the line goes up and the other goes down: use the whole ${span(given)} mm.`,
    }),
    doubled: (given, reply) => ({
      title: 'Close: that counts the tilt twice',
      text: `${reply} gives each side the whole tilt and adds them. The ${span(given)} mm already reach from one side to the other.`,
    }),
    'per-cent': (_, reply) => ({
      title: 'Close: a degree is more than one in a hundred',
      text: `${reply} takes a degree as one millimetre in each hundred. It is about one and three quarters: the sine of one degree is 0.01745.`,
    }),
    'as-it-stands': (given, reply) => ({
      title: 'Degrees are not millimetres',
      text:
        given.asks === 'height'
          ? `${reply} is the tilt written as a length. What a degree makes depends on how far apart the points are: here ${span(given)} mm.`
          : `${reply} is the height written as an angle. Which tilt makes it depends on how far apart the points are: here ${span(given)} mm.`,
    }),
    radians: (given, reply) => ({
      title: 'Your calculator was not set to degrees',
      text:
        given.asks === 'height'
          ? `${reply} is the sine of ${fixed(given.tiltDeg)} radians. Set the calculator to degrees, or multiply 0.01745 by the degrees.`
          : `${reply} is the angle in radians. Set the calculator to degrees, or divide by 0.01745.`,
    }),
  },
  other: (given, reply) => ({
    title: 'Not there yet',
    text: `${reply} does not follow from any way of working we know. ${given.asks === 'height' ? 'Multiply the distance by the sine of the tilt.' : 'Divide the height by the distance, then ask for the angle with that sine.'}`,
  }),
};
