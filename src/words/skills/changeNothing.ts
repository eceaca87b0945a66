import type { Pose, Posture, Side, SkinState } from '#lib/mapping/markSet.ts';
import { poseWords, postureWords, skinWords } from '../marks.ts';
import { fixed, signed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

export const comparedThings = ['front-height', 'arch-height', 'tail-height', 'front-place'] as const;
export type ComparedThing = (typeof comparedThings)[number];
/** Left minus right, with the two ends of what the readings allow. */
export type Compared = Readonly<{ differenceMm: number; loMm: number; hiMm: number }>;
export type TakenSide = Readonly<{ pose: Pose; posture: Posture; skin: SkinState }>;
export const nextMoves = ['change-nothing', 'raise-right-arch', 'raise-left-arch', 'bring-in-right-front', 'bring-in-left-front', 'measure-again'] as const;
export type NextMove = (typeof nextMoves)[number];

export type ChangeNothingGiven = Readonly<{
  compared: Readonly<Record<ComparedThing, Compared>>;
  taken: Readonly<Record<Side, TakenSide>>;
}>;

const thingWords: Readonly<Record<ComparedThing, string>> = {
  'front-height': 'front, height',
  'arch-height': 'arch, height',
  'tail-height': 'tail, height',
  'front-place': 'front, distance from the midline',
};

const moveWords: Readonly<Record<NextMove, string>> = {
  'change-nothing': 'Change nothing',
  'raise-right-arch': 'Raise the right arch',
  'raise-left-arch': 'Raise the left arch',
  'bring-in-right-front': 'Bring the right front nearer to the midline',
  'bring-in-left-front': 'Bring the left front nearer to the midline',
  'measure-again': 'Measure both sides again, alike',
};

const isMove = (code: string): code is NextMove => nextMoves.some((name) => name === code);
/** "−0.4 to +1.6" */
const rangeOf = ({ loMm, hiMm }: Compared) => `${signed(loMm)} to ${signed(hiMm)} mm`;
const includesZero = ({ loMm, hiMm }: Compared) => loMm <= 0 && hiMm >= 0;
const takenWords = ({ pose, posture, skin }: TakenSide) => `${postureWords[posture]}, ${poseWords[pose]}, skin ${skinWords[skin]}`;

/** What is unlike about how the two sides were read; empty when they were read alike. */
function unlike({ taken: { right, left } }: ChangeNothingGiven): string {
  if (right.posture !== left.posture) return `The right side was read ${postureWords[right.posture]}, the left side ${postureWords[left.posture]}`;
  if (right.pose !== left.pose) return `The right side was read ${poseWords[right.pose]}, the left side ${poseWords[left.pose]}`;
  return right.skin === left.skin ? '' : `The skin was ${skinWords[right.skin]} on the right and ${skinWords[left.skin]} on the left`;
}

/** The way out: what the table really allows. */
function truth(given: ChangeNothingGiven): string {
  const why = unlike(given);
  if (why) return `${why}. Sides that were read differently are not compared: read both again, alike.`;
  const real = comparedThings.find((thing) => !includesZero(given.compared[thing]));
  if (!real) return 'Every range holds 0, so no difference is shown to be real. Leave the brows as they are.';
  const { differenceMm } = given.compared[real];
  const what = real === 'front-place' ? `the ${differenceMm > 0 ? 'left' : 'right'} front stands further out` : `the ${differenceMm > 0 ? 'right' : 'left'} arch is lower`;
  return `Only one range leaves 0 out: ${thingWords[real]}, ${rangeOf(given.compared[real])}. So ${what}, and that one may be changed.`;
}

function chased(given: ChangeNothingGiven, thing: ComparedThing, reply: string) {
  const row = given.compared[thing];
  return unlike(given)
    ? { title: 'These two sides cannot be compared', text: `You chose “${reply}”. The number for ${thingWords[thing]} is ${signed(row.differenceMm)} mm, but it may come from how the sides were read. ${truth(given)}` }
    : { title: 'That difference is not shown to be real', text: `You chose “${reply}”. For ${thingWords[thing]} the readings allow ${rangeOf(row)}, and 0 lies inside. ${truth(given)}` };
}

function wrongSide(given: ChangeNothingGiven, thing: ComparedThing, reply: string) {
  const { differenceMm } = given.compared[thing];
  const which = differenceMm > 0 ? 'left' : 'right';
  const what = thing === 'front-place' ? `the ${which} front reads further out` : `the ${which} arch reads higher`;
  return { title: 'Mind the side: the table is left minus right', text: `You chose “${reply}”. The difference is ${signed(differenceMm)} mm, so ${what}. ${truth(given)}` };
}

export const changeNothingWords: ProblemWords<ChangeNothingGiven> = {
  name: 'Change nothing',
  summary: 'Read a small table of differences with their ranges, and say what to do next. Often the answer is nothing.',
  question: () => 'What do you do next?',
  givens: ({ taken: { right, left } }) => [
    'The drawing is done and measured. Each range is what your readings allow, with all four comparisons counted. Pigment can be added, not taken out.',
    `Right side: ${takenWords(right)}. Left side: ${takenWords(left)}.`,
  ],
  table: ({ compared }) => ({
    caption: 'Left minus right, mm',
    head: ['What', 'Difference', 'Range'],
    rows: comparedThings.map((thing) => [thingWords[thing], signed(compared[thing].differenceMm), `${signed(compared[thing].loMm)} to ${signed(compared[thing].hiMm)}`]),
  }),
  label: 'Next',
  option: (code) => (isMove(code) ? moveWords[code] : code),
  steps: {
    alike: {
      hint: 'Before any number: were both sides read in the same pose and posture, with the skin in the same state?',
      done: (v) => (say(v, 'unlike') === 'no' ? 'Both sides were read alike, so they may be compared.' : `The sides were not read alike: ${say(v, 'unlike')}.`),
    },
    ranges: {
      hint: 'Look for 0 in each range. A difference whose range holds 0 is not shown to be real, however large it looks.',
      done: (v) => `Ranges that leave 0 out: ${say(v, 'real')}.`,
    },
    move: {
      hint: 'Change only what is shown to be real, by adding, and on the side that is lower or further out.',
      done: (v) => `Next: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'left-it': (given, reply) => ({
      title: unlike(given) ? 'Nothing is known yet' : 'Here one difference is real',
      text: `You chose “${reply}”. ${truth(given)}`,
    }),
    'measured-again': (given, reply) => ({
      title: 'The readings are good enough',
      text: `You chose “${reply}”. Both sides were read in the same way, so the table may be used. ${truth(given)}`,
    }),
    'chased-arch': (given, reply) => chased(given, 'arch-height', reply),
    'chased-front': (given, reply) => chased(given, 'front-place', reply),
    'arch-wrong-side': (given, reply) => wrongSide(given, 'arch-height', reply),
    'front-wrong-side': (given, reply) => wrongSide(given, 'front-place', reply),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${truth(given)}` }),
};

/** The unlike part in a step, "no" when there is none. */
export const unlikeWords = (given: ChangeNothingGiven): string => unlike(given).replace(/^The/, 'the') || 'no';
/** "none", or the things whose ranges leave 0 out. */
export function realWords({ compared }: ChangeNothingGiven): string {
  const real = comparedThings.filter((thing) => !includesZero(compared[thing]));
  return real.length === 0 ? 'none' : real.map((thing) => `${thingWords[thing]} (${fixed(Math.abs(compared[thing].differenceMm))} mm)`).join('; ');
}
