import type { Side } from '#lib/mapping/marks/markSet.ts';
import { poseWords, postureWords, skinWords } from '../marks.ts';
import { fixed, signed } from '../number.ts';
import type { TakenSide } from './changeNothing.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

/** One arch read on two days, and the smallest change that counts as real. */
export type PostureMismatchGiven = Readonly<{
  side: Side;
  then: TakenSide;
  now: TakenSide;
  thenMm: number;
  nowMm: number;
  realMm: number;
}>;
export const mismatchCodes = ['moved', 'not-shown', 'pose', 'posture', 'skin'] as const;
export type MismatchCode = (typeof mismatchCodes)[number];

const takenWords = ({ pose, posture, skin }: TakenSide) =>
  `${poseWords[pose]}; ${postureWords[posture]}; skin ${skinWords[skin]}`;
const isCode = (code: string): code is MismatchCode => mismatchCodes.some((name) => name === code);
const optionWords: Readonly<Record<MismatchCode, string>> = {
  moved: 'The arch has moved',
  'not-shown': 'No change is shown to be real',
  pose: 'Nothing: the face was held differently',
  posture: 'Nothing: she sat once and lay once',
  skin: 'Nothing: the skin was not in the same state',
};

/** The part in which the two days differ, if any. */
export function mismatch({ then, now }: PostureMismatchGiven): 'pose' | 'posture' | 'skin' | undefined {
  if (then.pose !== now.pose) return 'pose';
  if (then.posture !== now.posture) return 'posture';
  return then.skin === now.skin ? undefined : 'skin';
}

const differs = {
  pose: ({ then, now }: PostureMismatchGiven) =>
    `The face was “${poseWords[then.pose]}” then and “${poseWords[now.pose]}” today`,
  posture: ({ then, now }: PostureMismatchGiven) =>
    `She was ${postureWords[then.posture]} then and ${postureWords[now.posture]} today`,
  skin: ({ then, now }: PostureMismatchGiven) =>
    `Her skin was ${skinWords[then.skin]} then and ${skinWords[now.skin]} today`,
} as const;

const changeMm = ({ thenMm, nowMm }: PostureMismatchGiven) => nowMm - thenMm;

/** The way out. */
function truth(given: PostureMismatchGiven): string {
  const part = mismatch(given);
  if (part)
    return `${differs[part](given)}. How much of the ${signed(changeMm(given))} mm comes from that, nobody can say. Read again, alike.`;
  const size = Math.abs(changeMm(given));
  return `Both days were read alike, so the numbers may be compared. ${fixed(size)} mm is ${size > given.realMm ? 'more' : 'less'} than ${fixed(given.realMm)} mm.`;
}

const blamed =
  (part: 'pose' | 'posture' | 'skin', name: string) => (given: PostureMismatchGiven, reply: string) => {
    const really = mismatch(given);
    return {
      title: really ? `Not the ${name}: look at the other words` : 'These two may be compared',
      text: `You chose “${reply}”. ${really ? `The ${name} was the same both times.` : `The ${name} was the same both times, and so was the rest${part === 'posture' && given.then.posture === 'lying' ? ': lying both times is alike too' : ''}.`} ${truth(given)}`,
    };
  };

export const postureMismatchWords: ProblemWords<PostureMismatchGiven> = {
  name: 'Posture mismatch',
  summary:
    'Say what two readings of one arch on two days allow: a change, no change shown, or no comparison at all.',
  question: ({ side, thenMm, nowMm }) =>
    `Then the ${side} arch read ${fixed(thenMm)} mm, today ${fixed(nowMm)} mm. What may you say?`,
  givens: ({ then, now, realMm }) => [
    `Then: ${takenWords(then)}. Today: ${takenWords(now)}.`,
    `Both heights are above the pupils, with the same level line. With your readings a change is real from ${fixed(realMm)} mm.`,
  ],
  label: 'You say',
  option: (code) => (isCode(code) ? optionWords[code] : code),
  steps: {
    alike: {
      hint: 'Before any number: compare the three words. Face, position, skin.',
      done: (v) => `What differs in how the two were taken: ${say(v, 'unlike')}.`,
    },
    change: {
      hint: 'If nothing differs, take today minus then and hold it against the smallest real change.',
      done: (v) =>
        `Today minus then: ${say(v, 'nowMm', 1)} − ${say(v, 'thenMm', 1)} = ${say(v, 'changeMm', 1)} mm; real from ${say(v, 'realMm', 1)} mm. ${say(v, 'use')}`,
    },
    answer: {
      hint: 'One word that differs is enough to refuse. Otherwise the number decides.',
      done: (v) => `You say: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'said-moved': (given, reply) => ({
      title: mismatch(given) ? 'The number may be the pose’s own' : 'Close: too small to say so',
      text: `You chose “${reply}”. ${truth(given)}`,
    }),
    'said-not-shown': (given, reply) => ({
      title: mismatch(given) ? 'That cannot be said either' : 'This change is real',
      text: `You chose “${reply}”. ${mismatch(given) ? 'A true change may hide behind the way it was taken. ' : ''}${truth(given)}`,
    }),
    'blamed-pose': blamed('pose', 'face'),
    'blamed-posture': blamed('posture', 'position'),
    'blamed-skin': blamed('skin', 'skin'),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${truth(given)}` }),
};

/** The differing part in a step. */
export function mismatchWords(given: PostureMismatchGiven): string {
  const part = mismatch(given);
  return part ? differs[part](given).replace(/^(The|She|Her)/, (word) => word.toLowerCase()) : 'nothing';
}
