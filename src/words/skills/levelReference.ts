import type { Side } from '#lib/mapping/marks/markSet.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

/** A mark against a level thread: how far along it from the right outer eye corner, how high above it. */
export type OverThread = Readonly<{ alongMm: number; upMm: number }>;
export type LevelReferenceGiven = Readonly<{
  corners: Readonly<Record<Side, OverThread>>;
  fronts: Readonly<Record<Side, OverThread>>;
  /** The front that stands higher over the eye-corner line. */
  higher: Side;
}>;

const otherSide = (side: Side): Side => (side === 'right' ? 'left' : 'right');
/** "4.5 mm higher on her left" */
function riseWords({ corners: { right, left } }: LevelReferenceGiven): string {
  const rise = left.upMm - right.upMm;
  return `${short(Math.abs(rise), 1)} mm higher on her ${rise > 0 ? 'left' : 'right'}`;
}

/** A negative number inside a sum stands in brackets. */
const bracketed = (number: string) => (number.startsWith('−') ? `(${number})` : number);

export const levelReferenceWords: ProblemWords<LevelReferenceGiven> = {
  name: 'Level reference',
  summary: 'Say how level two fronts are against the eye-corner line when that line itself slopes.',
  question: ({ higher }) => `How much higher is the ${higher} front, against the eyes?`,
  givens: (given) => [
    'A level thread is stretched below the eyes. Along it you read from the right outer eye corner; up from it you read heights.',
    `The client wants her brows level with her eyes. The line through her outer eye corners slopes: it is ${riseWords(given)}. Give the height over that line.`,
  ],
  table: ({ corners, fronts }) => ({
    caption: 'Readings, mm',
    head: ['Mark', 'Along', 'Up'],
    rows: [
      ['right outer eye corner', short(corners.right.alongMm, 1), fixed(corners.right.upMm)],
      ['right front, top', short(fronts.right.alongMm, 1), fixed(fronts.right.upMm)],
      ['left front, top', short(fronts.left.alongMm, 1), fixed(fronts.left.upMm)],
      ['left outer eye corner', short(corners.left.alongMm, 1), fixed(corners.left.upMm)],
    ],
  }),
  label: 'Height of one front over the other, straight up',
  option: (code) => code,
  steps: {
    slope: {
      hint: 'How much does the eye-corner line rise for each millimetre along? Take its whole rise and its whole length.',
      done: (v) =>
        `Slope of the eye-corner line, right to left: (${say(v, 'leftMm', 1)} − ${say(v, 'rightMm', 1)}) ÷ ${say(v, 'lengthMm', 1)} = ${say(v, 'slope', 4)} mm for each mm.`,
    },
    share: {
      hint: 'The fronts stand much closer together than the corners. Only that share of the rise counts.',
      done: (v) =>
        `Between the fronts the line changes by ${bracketed(say(v, 'slope', 4))} × (${say(v, 'leftAlongMm', 1)} − ${say(v, 'rightAlongMm', 1)}) = ${say(v, 'shareMm')} mm, right to left.`,
    },
    raw: {
      hint: 'How much higher is the left front over the thread?',
      done: (v) =>
        `Over the thread, left minus right: ${say(v, 'leftMm', 1)} − ${say(v, 'rightMm', 1)} = ${say(v, 'rawMm')} mm.`,
    },
    answer: {
      hint: 'Take the line’s own change away from the difference over the thread.',
      done: (v) =>
        `Over the eye-corner line, left minus right: ${say(v, 'rawMm')} − ${bracketed(say(v, 'shareMm'))} = ${say(v, 'differenceMm')} mm. So the ${say(v, 'higher')} front is higher by ${sayTenths(v, 'answerMm')} mm.`,
    },
  },
  right: ({ higher }, reply) =>
    `The ${higher} front is ${reply} higher than the other one, once the slope of the eyes is taken off.`,
  slips: {
    'forgot-the-slope': (given, reply) => ({
      title: 'Close: that is over the thread',
      text: `${reply} is the difference over the level thread. The client asked for level with her eyes, and they are ${riseWords(given)}. Take off the part of that slope that lies between the fronts.`,
    }),
    'wrong-sign': (given, reply) => ({
      title: 'Close: the slope went the wrong way',
      text: `You worked out the slope’s share and added it where it is taken off: ${reply}. The eyes are ${riseWords(given)}. Against a line that rises to one side, a front on that side counts for less, not for more.`,
    }),
    'whole-rise': ({ corners, fronts }, reply) => ({
      title: 'Close: that takes off the whole rise',
      text: `${reply} takes off what the eye line rises over all its ${short(corners.left.alongMm - corners.right.alongMm, 1)} mm. The fronts are ${short(fronts.left.alongMm - fronts.right.alongMm, 1)} mm apart: only that share counts.`,
    }),
    'half-the-rise': ({ fronts }, reply) => ({
      title: 'Close: that takes off half the rise',
      text: `${reply} takes the eye line’s rise up to the midline. Both fronts have a place of their own: count from one to the other, ${short(fronts.left.alongMm - fronts.right.alongMm, 1)} mm.`,
    }),
    'slope-alone': (_, reply) => ({
      title: 'That is the eye line’s part alone',
      text: `${reply} is how much the eye-corner line changes from one front to the other. You need it, but it is what has to be taken off the difference of the fronts.`,
    }),
  },
  other: ({ higher }, reply) => ({
    title: 'Not there yet',
    text: `${reply} does not follow from any way of working we know. Begin with the slope of the eye-corner line: its rise divided by its length. The ${otherSide(higher)} front is the lower one.`,
  }),
};
