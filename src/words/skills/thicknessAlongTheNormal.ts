import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths } from './say.ts';

export const lineNames = ['A', 'B', 'C'] as const;
export type LineName = (typeof lineNames)[number];
/** Both ends of one line across a brow. */
export type BrowLine = Readonly<{ lower: FacePoint; upper: FacePoint }>;

export type ThicknessGiven = Readonly<{
  side: Side;
  brow: Brow;
  /** % of the length from the front. */
  stationPercent: number;
  /** How far the centreline climbs at the station over 10 mm outward; minus: it falls. */
  climbMm: number;
  lines: Readonly<Record<LineName, BrowLine>>;
  /** Which line is which: square to the centreline, straight up, leaning as far the other way. */
  square: LineName;
  upright: LineName;
  leaning: LineName;
}>;

const slopeWords = ({ climbMm }: ThicknessGiven) =>
  `${climbMm > 0 ? 'climbs' : 'falls'} ${fixed(Math.abs(climbMm))} mm`;
/** A line square to a climbing brow leans towards the midline at its top. */
const leanWords = ({ climbMm }: ThicknessGiven) => (climbMm > 0 ? 'towards the midline' : 'outward');
const lengthOf = ({ lower, upper }: BrowLine) => Math.hypot(upper.uMm - lower.uMm, upper.vMm - lower.vMm);

export const thicknessAlongTheNormalWords: ProblemWords<ThicknessGiven> = {
  name: 'Thickness straight across',
  summary: 'Find the line that stands square to a sloping brow and read the thickness along it.',
  question: ({ side, stationPercent }) =>
    `How thick is the ${side} brow at ${stationPercent} % of its length, straight across?`,
  givens: (given) => [
    `At this station the centreline ${slopeWords(given)} over 10 mm outward. Three lines cross the brow through the same point of the centreline.`,
    'The table says where each line meets the edges: out from the midline, and up from the pupils. The last row is the two arch marks.',
  ],
  table: ({ lines, brow }) => ({
    caption: 'Where the lines meet the edges, mm',
    head: ['Line', 'Lower, out', 'Lower, up', 'Upper, out', 'Upper, up'],
    rows: [
      ...lineNames.map((name) => [name, lines[name]] as const),
      ['Arch marks', { lower: brow.archLower, upper: brow.archTop }] as const,
    ].map(([name, { lower, upper }]) => [
      name,
      fixed(lower.uMm),
      fixed(lower.vMm),
      fixed(upper.uMm),
      fixed(upper.vMm),
    ]),
  }),
  label: 'Thickness straight across',
  option: (code) => code,
  steps: {
    find: {
      hint: 'Which line stands square to the centreline? Where the brow climbs outward, the line’s top leans towards the midline; where it falls, outward.',
      done: (v) =>
        `The brow ${say(v, 'way')}, so the square line’s top leans ${say(v, 'lean')}: line ${say(v, 'name')}.`,
    },
    parts: {
      hint: 'How far does that line go out or in, and how far up? Subtract its two ends.',
      done: (v) =>
        `Line ${say(v, 'name')} goes ${sayTenths(v, 'acrossMm')} mm sideways and ${sayTenths(v, 'upMm')} mm up.`,
    },
    length: {
      hint: 'Square both, add, and take the root.',
      done: (v) =>
        `√(${sayTenths(v, 'acrossMm')}² + ${sayTenths(v, 'upMm')}²): ${sayTenths(v, 'thicknessMm')} mm.`,
    },
  },
  right: (given, reply) =>
    `${reply}, along line ${given.square}. Straight up, line ${given.upright} would have said ${fixed(lengthOf(given.lines[given.upright]))}.`,
  slips: {
    'straight-up': (given, reply) => ({
      title: 'Close: that is straight up',
      text: `${reply} is line ${given.upright}. The brow ${slopeWords(given)} over 10 mm here, so straight up runs along it a little and comes out too long.`,
    }),
    'leaning-wrong': (given, reply) => ({
      title: 'It leans the wrong way',
      text: `${reply} is line ${given.leaning}. The brow ${slopeWords(given)} over 10 mm outward: a line square to it leans ${leanWords(given)} at its top.`,
    }),
    'height-only': (given, reply) => ({
      title: 'Close: that is only its height',
      text: `${reply} is how far line ${given.square} goes up. It goes sideways too: square both parts, add, and take the root.`,
    }),
    'sum-of-parts': (given, reply) => ({
      title: 'Close: that goes round the corner',
      text: `${reply} adds the way sideways to the way up of line ${given.square}. The line itself is the short cut: square both parts, add, and take the root.`,
    }),
    'arch-marks': (given, reply) => ({
      title: 'That is another place',
      text: `${reply} is the distance between the two arch marks. The question asks for ${given.stationPercent} % of the length.`,
    }),
  },
  other: (given, reply) => ({
    title: 'Not there yet',
    text: `${reply} does not follow from any way of working we know. Find the line whose top leans ${leanWords(given)}, then measure from edge to edge along it.`,
  }),
};
