import type { Pose, Posture, Side, SkinState } from '#lib/mapping/marks/markSet.ts';
import { poseWords, postureWords, skinWords } from '../marks.ts';
import { fixed, signed } from '../number.ts';
import { mostSeeMm } from '#lib/mapping/numbers/start.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

export const comparedThings = ['front-height', 'arch-height', 'tail-height', 'front-place'] as const;
export type ComparedThing = (typeof comparedThings)[number];
/** Left minus right, with the two ends of what the readings allow. */
export type Compared = Readonly<{ differenceMm: number; loMm: number; hiMm: number }>;
export type TakenSide = Readonly<{ pose: Pose; posture: Posture; skin: SkinState }>;
export const nextMoves = [
  'change-nothing',
  'ask-first',
  'raise-right-arch',
  'raise-left-arch',
  'bring-in-right-front',
  'bring-in-left-front',
  'measure-again',
] as const;
export type NextMove = (typeof nextMoves)[number];

/**
 * What she has said of her two sides: nothing, that she would like them more alike, or yes to a change drawn
 * in pencil.
 */
export const wishes = ['quiet', 'asks', 'said-yes'] as const;
export type Wish = (typeof wishes)[number];

export type ChangeNothingGiven = Readonly<{
  compared: Readonly<Record<ComparedThing, Compared>>;
  wish: Wish;
  taken: Readonly<Record<Side, TakenSide>>;
}>;

const wishWords: Readonly<Record<Wish, string>> = {
  quiet: 'She came for colour and has not spoken of her two sides.',
  asks: 'She would like her two sides more alike. Nothing is drawn yet.',
  'said-yes':
    'She asked for more equal brows. You drew the change in pencil, and she looked in the mirror and said yes.',
};

const thingWords: Readonly<Record<ComparedThing, string>> = {
  'front-height': 'front, height',
  'arch-height': 'arch, height',
  'tail-height': 'tail, height',
  'front-place': 'front, distance from the midline',
};

const moveWords: Readonly<Record<NextMove, string>> = {
  'change-nothing': 'Change nothing',
  'ask-first': 'Real: tell her, ask, draw it first',
  'raise-right-arch': 'Raise the right arch with pigment',
  'raise-left-arch': 'Raise the left arch with pigment',
  'bring-in-right-front': 'Bring the right front nearer to the midline with pigment',
  'bring-in-left-front': 'Bring the left front nearer to the midline with pigment',
  'measure-again': 'Measure both sides again, alike',
};

const isMove = (code: string): code is NextMove => nextMoves.some((name) => name === code);
/** "−0.4 to +1.6" */
const rangeOf = ({ loMm, hiMm }: Compared) => `${signed(loMm)} to ${signed(hiMm)} mm`;
const includesZero = ({ loMm, hiMm }: Compared) => loMm <= 0 && hiMm >= 0;
const takenWords = ({ pose, posture, skin }: TakenSide) =>
  `${postureWords[posture]}, ${poseWords[pose]}, skin ${skinWords[skin]}`;

/** What is unlike about how the two sides were read; empty when they were read alike. */
function unlike({ taken: { right, left } }: ChangeNothingGiven): string {
  if (right.posture !== left.posture)
    return `The right side was read ${postureWords[right.posture]}, the left side ${postureWords[left.posture]}`;
  if (right.pose !== left.pose)
    return `The right side was read ${poseWords[right.pose]}, the left side ${poseWords[left.pose]}`;
  return right.skin === left.skin
    ? ''
    : `The skin was ${skinWords[right.skin]} on the right and ${skinWords[left.skin]} on the left`;
}

/** The way out: what the table really allows. */
function truth(given: ChangeNothingGiven): string {
  const why = unlike(given);
  if (why) return `${why}. Sides that were read differently are not compared: read both again, alike.`;
  const real = comparedThings.find((thing) => !includesZero(given.compared[thing]));
  if (!real) return 'Every range holds 0, so no difference is shown to be real. Leave the brows as they are.';
  const { differenceMm } = given.compared[real];
  const what =
    real === 'front-place'
      ? `the ${differenceMm > 0 ? 'left' : 'right'} front stands further out`
      : `the ${differenceMm > 0 ? 'right' : 'left'} arch is lower`;
  const shown = `Only one range leaves 0 out: ${thingWords[real]}, ${rangeOf(given.compared[real])}. So ${what}.`;
  return given.wish === 'said-yes'
    ? `${shown} She has seen the change in pencil and said yes to it, so that one may be changed.`
    : `${shown} Real does not mean that it must be changed: it is under ${fixed(mostSeeMm, 0)} mm, and she has not said yes to any change. Tell her, ask her, and draw it in pencil first.`;
}

function wishDone(wish: number | string): string {
  if (wish === 'said-yes') return 'She has seen a change drawn in pencil and said yes to it.';
  return wish === 'asks'
    ? 'She would like more equal sides. Nothing is drawn yet, so she has said yes to nothing.'
    : 'She has not asked for any change.';
}

function chased(given: ChangeNothingGiven, thing: ComparedThing, reply: string) {
  const row = given.compared[thing];
  if (!unlike(given) && !includesZero(row))
    return {
      title: 'Real, but it is her brow',
      text: `You chose “${reply}”. ${truth(given)} Pencil can be wiped, pigment cannot.`,
    };
  return unlike(given)
    ? {
        title: 'These two sides cannot be compared',
        text: `You chose “${reply}”. The number for ${thingWords[thing]} is ${signed(row.differenceMm)} mm, but it may come from how the sides were read. ${truth(given)}`,
      }
    : {
        title: 'That difference is not shown to be real',
        text: `You chose “${reply}”. For ${thingWords[thing]} the readings allow ${rangeOf(row)}, and 0 lies inside. ${truth(given)}`,
      };
}

function wrongSide(given: ChangeNothingGiven, thing: ComparedThing, reply: string) {
  const { differenceMm } = given.compared[thing];
  const which = differenceMm > 0 ? 'left' : 'right';
  const what =
    thing === 'front-place' ? `the ${which} front reads further out` : `the ${which} arch reads higher`;
  return {
    title: 'Mind the side: the table is left minus right',
    text: `You chose “${reply}”. The difference is ${signed(differenceMm)} mm, so ${what}. ${truth(given)}`,
  };
}

export const changeNothingWords: ProblemWords<ChangeNothingGiven> = {
  name: 'Change nothing',
  summary:
    'Read a small table of differences with their ranges, and say what to do next. Often the answer is nothing, or a word with her.',
  question: () => 'What do you do next?',
  givens: ({ wish, taken: { right, left } }) => [
    'You measured her two brows as they are now, in the skin. Each range is what your readings allow, with all four comparisons counted. A pencil line can be wiped; pigment can be added, not taken out.',
    `Right side: ${takenWords(right)}. Left side: ${takenWords(left)}.`,
    wishWords[wish],
  ],
  table: ({ compared }) => ({
    caption: 'Left minus right, as they are in the skin, mm',
    head: ['What', 'Difference', 'Range'],
    rows: comparedThings.map((thing) => [
      thingWords[thing],
      signed(compared[thing].differenceMm),
      `${signed(compared[thing].loMm)} to ${signed(compared[thing].hiMm)}`,
    ]),
  }),
  label: 'Next',
  option: (code) => (isMove(code) ? moveWords[code] : code),
  steps: {
    alike: {
      hint: 'Before any number: were both sides read in the same pose and posture, with the skin in the same state?',
      done: (v) =>
        say(v, 'unlike') === 'no'
          ? 'Both sides were read alike, so they may be compared.'
          : `The sides were not read alike: ${say(v, 'unlike')}.`,
    },
    ranges: {
      hint: 'Look for 0 in each range. A difference whose range holds 0 is not shown to be real, however large it looks.',
      done: (v) => `Ranges that leave 0 out: ${say(v, 'real')}.`,
    },
    wish: {
      hint: 'Then ask what she has said. Real does not mean that it must be changed.',
      done: (v) => wishDone(say(v, 'wish')),
    },
    move: {
      hint: 'Pigment goes only where a difference is shown to be real and she has said yes to the drawn change: by adding, on the side that is lower or further out.',
      done: (v) => `Next: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'left-untold': (given, reply) => ({
      title: 'Right to leave it, if she has heard of it',
      text: `You chose “${reply}”. ${truth(given)} If she then likes it as it is, change nothing, and write down that she said so.`,
    }),
    'asked-first': (given, reply) => ({
      title: unlike(given)
        ? 'Nothing is known yet'
        : given.wish === 'said-yes'
          ? 'She has said yes already'
          : 'No difference is shown to be real',
      text: `You chose “${reply}”. ${truth(given)}`,
    }),
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
export const unlikeWords = (given: ChangeNothingGiven): string =>
  unlike(given).replace(/^The/, 'the') || 'no';
/** "none", or the things whose ranges leave 0 out. */
export function realWords({ compared }: ChangeNothingGiven): string {
  const real = comparedThings.filter((thing) => !includesZero(compared[thing]));
  return real.length === 0
    ? 'none'
    : real
        .map((thing) => `${thingWords[thing]} (${fixed(Math.abs(compared[thing].differenceMm))} mm)`)
        .join('; ');
}
