import type { Side } from '#lib/mapping/marks/markSet.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

/** One mark of one side: out from the midline, up from the pupils, mm. */
export type OutUp = Readonly<{ outMm: number; upMm: number }>;
export const tailVerdicts = ['past-line', 'too-low', 'too-high', 'longer', 'passes'] as const;
export type TailVerdict = (typeof tailVerdicts)[number];

export type TailChecksGiven = Readonly<{
  side: Side;
  wing: OutUp;
  corner: OutUp;
  frontLower: OutUp;
  frontTop: OutUp;
  tail: OutUp;
  /** Length of the other brow, straight across, mm. */
  otherLengthMm: number;
  /** From here on a check counts as failed. */
  limitMm: number;
}>;

const verdictWords: Readonly<Record<TailVerdict, string>> = {
  'past-line': 'It ends past the tail line',
  'too-low': 'Its tip is below the front’s lower edge',
  'too-high': 'Its tip is above the front’s top',
  longer: 'It makes this brow the longer one',
  passes: 'None: it passes all four',
};
const isVerdict = (code: string): code is TailVerdict => tailVerdicts.some((name) => name === code);
const option = (code: string) => (isVerdict(code) ? verdictWords[code] : code);
const otherSide = (side: Side): Side => (side === 'right' ? 'left' : 'right');

/** How far out the line stands at the height of the tip, mm. Told here; the library marks it. */
const limitAt = ({ wing, corner, tail }: TailChecksGiven) =>
  wing.outMm + ((corner.outMm - wing.outMm) * (tail.upMm - wing.upMm)) / (corner.upMm - wing.upMm);
const lengthOf = ({ tail, frontLower }: TailChecksGiven) => tail.outMm - frontLower.outMm;

function line(given: TailChecksGiven): string {
  const room = limitAt(given) - given.tail.outMm;
  return `At ${fixed(given.tail.upMm)} mm up the line stands ${fixed(limitAt(given))} mm out, and the tip at ${fixed(given.tail.outMm)}: ${fixed(Math.abs(room))} mm ${room > 0 ? 'inside' : 'past it'}.`;
}
const level = ({ tail, frontLower, frontTop }: TailChecksGiven) =>
  `The tip lies ${fixed(tail.upMm)} mm up; its front runs from ${fixed(frontLower.upMm)} to ${fixed(frontTop.upMm)}.`;
const lengths = (given: TailChecksGiven) =>
  `This brow is ${fixed(lengthOf(given))} mm long, the ${otherSide(given.side)} one ${fixed(given.otherLengthMm)}.`;

/** What is really the matter, from the numbers. */
function truth(given: TailChecksGiven): string {
  const { tail, frontLower, frontTop, limitMm } = given;
  if (tail.outMm - limitAt(given) >= limitMm) return line(given);
  if (frontLower.upMm - tail.upMm >= limitMm || tail.upMm - frontTop.upMm >= limitMm) return level(given);
  if (lengthOf(given) - given.otherLengthMm >= limitMm) return lengths(given);
  return 'Line, lower edge, top and length are all kept.';
}

export const tailChecksWords: ProblemWords<TailChecksGiven> = {
  name: 'Tail checks',
  summary: 'Check one tail against its line, its front’s two levels and the other brow’s length.',
  question: ({ side }) => `Which check does this ${side} tail fail?`,
  givens: ({ side, otherLengthMm, limitMm }) => [
    `All marks are of her ${side} side: out from the midline, up from the pupils. Minus is below the pupils.`,
    `Her ${otherSide(side)} brow is ${fixed(otherLengthMm)} mm long, straight across from the lower front mark. A check fails from ${short(limitMm)} mm on; less is reading. At most one fails.`,
  ],
  table: ({ wing, corner, frontLower, frontTop, tail }) => ({
    caption: 'Readings, mm',
    head: ['Mark', 'Out', 'Up'],
    rows: (
      [
        ['nose wing', wing],
        ['outer eye corner', corner],
        ['front, lower', frontLower],
        ['front, top', frontTop],
        ['tail tip', tail],
      ] as const
    ).map(([name, { outMm, upMm }]) => [name, fixed(outMm), fixed(upMm)]),
  }),
  label: 'The tail fails this check',
  option,
  steps: {
    line: {
      hint: 'How far out does the line go for each millimetre up? Follow it from the corner to the height of the tip.',
      done: (v) =>
        `The line goes out ${say(v, 'slope', 3)} mm for each mm up. At ${sayTenths(v, 'upMm')} mm it stands at ${sayTenths(v, 'limitMm')}; the tip is at ${sayTenths(v, 'outMm')}.`,
    },
    level: {
      hint: 'Is the tip between the front’s lower edge and its top?',
      done: (v) =>
        `The tip at ${sayTenths(v, 'upMm')} mm against the front’s ${sayTenths(v, 'lowerMm')} to ${sayTenths(v, 'topMm')} mm.`,
    },
    length: {
      hint: 'How long is this brow, straight across? Compare with the other one.',
      done: (v) =>
        `Length: ${sayTenths(v, 'outMm')} − ${sayTenths(v, 'frontMm')} = ${sayTenths(v, 'lengthMm')} mm; the other brow ${sayTenths(v, 'otherMm')} mm.`,
    },
    decide: {
      hint: 'Which of the four is off by a millimetre or more?',
      done: (v) => `Answer: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'said-past-line': (given, reply) => ({
      title: 'The line runs on outward',
      text: `You chose “${reply}”. ${line(given)} The corner itself is not the limit: above it the line goes on outward. ${truth(given)}`,
    }),
    'said-too-low': (given, reply) => ({
      title: 'Not too low',
      text: `You chose “${reply}”. ${level(given)} A tip may be lower than the arch and still be high enough. ${truth(given)}`,
    }),
    'said-too-high': (given, reply) => ({
      title: 'Not too high',
      text: `You chose “${reply}”. ${level(given)} Up to the front’s top is allowed. ${truth(given)}`,
    }),
    'said-longer': (given, reply) => ({
      title: 'Not the longer one',
      text: `You chose “${reply}”. ${lengths(given)} That is less than ${short(given.limitMm)} mm. ${truth(given)}`,
    }),
    'said-passes': (given, reply) => ({
      title: 'One check fails',
      text: `You chose “${reply}”. Go through all four: line, lower edge, top, length. ${truth(given)}`,
    }),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${truth(given)}` }),
};
