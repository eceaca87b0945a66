import type { BrowMark, Pose, Posture, SkinState } from '#lib/mapping/marks/markSet.ts';
import { browMarkWords, poseWords, postureWords, skinWords } from '../marks.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

export type HeightMark = Exclude<BrowMark, 'tail'>;

/**
 * One mark of an approved outline and where the pigment's edge is read after the first pass; `across`: the
 * other edge at the same place.
 */
export type AfterTheFirstPassGiven = Readonly<{
  mark: HeightMark;
  approvedMm: number;
  pigmentMm: number;
  across: Readonly<{ approvedMm: number; pigmentMm: number }>;
  /** From here on a gap at these marks is real: own error, tools and all marks together. */
  realFromMm: number;
  /** On swollen skin smaller gaps are left. */
  chaseFromMm: number;
  now: Readonly<{ pose: Pose; posture: Posture; skin: SkinState }>;
}>;

export const nextSteps = [
  'add-here',
  'stop-not-shown',
  'stop-swollen',
  'stop-over',
  'stop-thicker',
  'measure-again',
  'hide-it',
] as const;
export type NextStepCode = (typeof nextSteps)[number];

const isUpper = (mark: HeightMark) => mark === 'frontTop' || mark === 'archTop';
const markName = (mark: HeightMark) => browMarkWords[mark].replace(',', '');
const gapMm = ({ approvedMm, pigmentMm }: Readonly<{ approvedMm: number; pigmentMm: number }>) =>
  Math.abs(approvedMm - pigmentMm);
const acrossMark: Readonly<Record<HeightMark, HeightMark>> = {
  frontTop: 'frontLower',
  frontLower: 'frontTop',
  archTop: 'archLower',
  archLower: 'archTop',
};

/** Which way is short at this edge. */
export function wayInWords(mark: HeightMark): string {
  return isUpper(mark)
    ? 'At an upper mark, lower is short and higher is over.'
    : 'At a lower edge it is the other way round: higher is short and lower is over.';
}

/** What the other edge at the same place does: on its line, moved the same way, or otherwise. */
export function acrossWords({ mark, approvedMm, pigmentMm, across }: AfterTheFirstPassGiven): string {
  const [here, there] = [pigmentMm - approvedMm, across.pigmentMm - across.approvedMm];
  const [small = 0, large = 0] = [Math.abs(here), Math.abs(there)].sort((a, b) => a - b);
  const which = there < 0 ? 'lower' : 'higher';
  const name = `the ${markName(acrossMark[mark])}`;
  if (here * there > 0 && small >= large / 2)
    return `Both edges read ${which} by nearly the same (${fixed(Math.abs(here))} and ${fixed(Math.abs(there))} mm)`;
  return Math.abs(there) < 0.35
    ? `Its other edge, ${name}, is on its line`
    : `Its other edge, ${name}, reads ${fixed(Math.abs(there))} mm ${which}`;
}

/** True when both edges read off the same way by nearly the same, and by more than the readings can make. */
const isShifted = (given: AfterTheFirstPassGiven) =>
  acrossWords(given).startsWith('Both') && Math.max(gapMm(given), gapMm(given.across)) > given.realFromMm;
/** True when the other edge is past its line by more than the readings can make. */
const isOverAcross = ({ mark, across, realFromMm }: AfterTheFirstPassGiven) =>
  (isUpper(mark) ? across.approvedMm - across.pigmentMm : across.pigmentMm - across.approvedMm) > realFromMm;

/** "at rest, eyes open; sitting; skin swollen" */
function takenWords({ pose, posture, skin }: AfterTheFirstPassGiven['now']): string {
  return `${poseWords[pose]}; ${postureWords[posture]}; skin ${skinWords[skin]}`;
}

const carryWords: Readonly<Record<SkinState, string>> = {
  swollen: 'large enough for swollen skin',
  numb: 'numb skin is expected after a pass',
  normal: 'the skin is calm',
};

/**
 * Which way is out of the outline, and what decides at this mark: the first thing that holds, in the order in
 * which it is asked.
 */
function whyWords(given: AfterTheFirstPassGiven): string {
  const { mark, approvedMm, pigmentMm, realFromMm, chaseFromMm, now } = given;
  const gap = `${fixed(gapMm(given))} mm`;
  const isLower = pigmentMm < approvedMm;
  if (now.pose !== 'rest' || now.posture !== 'sitting')
    return `She is not placed as when she approved (now ${takenWords(now)}), so the two readings are not compared.`;
  if (isShifted(given))
    return `${acrossWords(given)}: the brow or the level has moved, not the pigment. Level first, and read both again.`;
  if (gapMm(given) < realFromMm)
    return `The numbers differ by ${gap}, and at these marks a gap is real only from ${fixed(realFromMm)} mm.`;
  const way = wayInWords(mark);
  if (isLower !== isUpper(mark)) return `${way} This pigment stands ${gap} over.`;
  if (isOverAcross(given))
    return `${way} It is ${gap} short. ${acrossWords(given)}, past the outline: filled here, the brow would be thicker than she approved.`;
  if (now.skin === 'swollen' && gapMm(given) < chaseFromMm)
    return `${way} It is ${gap} short and real, but under ${fixed(chaseFromMm)} mm, and the skin is swollen.`;
  return `${way} It is ${gap} short: real, inside the outline, and ${carryWords[now.skin]}. ${acrossWords(given)}.`;
}

export const afterTheFirstPassWords: ProblemWords<AfterTheFirstPassGiven> = {
  name: 'After the first pass',
  summary: 'Compare the approved outline with where the pigment sits, and choose the next step.',
  question: ({ mark }) => `What is the next step at the ${markName(mark)}?`,
  givens: ({ realFromMm, chaseFromMm, now }) => [
    `She approved the outline in the mirror: at rest, eyes open; sitting; skin normal. Now, after the first pass: ${takenWords(now)}.`,
    `With your readings a gap at these marks is real from ${fixed(realFromMm)} mm. On swollen skin nothing under ${fixed(chaseFromMm)} mm is chased.`,
  ],
  table: (given) => ({
    caption: 'Height above the pupils, mm',
    head: ['Mark', 'Approved', 'Pigment now'],
    rows: [
      [`${markName(given.mark)} (asked)`, fixed(given.approvedMm), fixed(given.pigmentMm)],
      [markName(acrossMark[given.mark]), fixed(given.across.approvedMm), fixed(given.across.pigmentMm)],
    ],
  }),
  label: 'Next step',
  option: (code, given) =>
    ({
      'add-here': `Add here: ${fixed(gapMm(given))} mm, to the outline and no further`,
      'stop-not-shown': 'Stop: no gap is shown to be real',
      'stop-swollen': 'Stop: the gap is real, but too small to chase on swollen skin',
      'stop-over': 'Stop: the pigment is past the outline',
      'stop-thicker': 'Stop: filled here, the brow would be thicker than she approved',
      'measure-again': 'Read again: placed as when she approved, level first',
      'hide-it': 'Cover the edge with a skin-coloured pigment',
    })[code] ?? code,
  steps: {
    alike: {
      hint: 'First see whether the two readings can be compared at all: same pose, same position.',
      done: (v) => say(v, 'alike'),
    },
    gap: {
      hint: 'Then work out the gap, and which way leads into the outline at this mark.',
      done: (v) => `${say(v, 'way')} Here it is ${say(v, 'gapMm')} mm ${say(v, 'side')}.`,
    },
    across: {
      hint: 'Look at the other edge at the same place. Where both are off the same way by nearly the same, the brow has moved, not the pigment.',
      done: (v) => `${say(v, 'across')}.`,
    },
    real: {
      hint: 'Compare the gap with what your readings can show, then with the state of the skin.',
      done: (v) => `Real from ${say(v, 'realFromMm')} mm; the skin is ${say(v, 'skin')}.`,
    },
    step: {
      hint: 'Only a real gap inside the outline is filled. Pigment is never taken out.',
      done: (v) => `${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${whyWords(given)}`,
  slips: {
    'added-it': (given, reply) => ({
      title: 'Pigment cannot be taken out again',
      text: `You chose “${reply}”. ${whyWords(given)}`,
    }),
    'called-not-shown': (given, reply) => ({
      title: 'Look at the size of the gap again',
      text: `You chose “${reply}”. ${whyWords(given)}`,
    }),
    'blamed-swelling': (given, reply) => ({
      title: 'Swelling does not decide this one',
      text: `You chose “${reply}”. ${whyWords(given)}`,
    }),
    'called-over': (given, reply) => ({
      title: 'Is it past the outline?',
      text: `You chose “${reply}”. ${whyWords(given)}`,
    }),
    'called-thicker': (given, reply) => ({
      title: 'Is the other edge past its line?',
      text: `You chose “${reply}”. ${whyWords(given)}`,
    }),
    'read-again': (given, reply) => ({
      title: 'The readings can be compared',
      text: `You chose “${reply}”. Pose and position are those of the approval, and the two edges did not move alike; swollen or numb skin is expected after a pass. ${whyWords(given)}`,
    }),
    'hid-it': (_, reply) => ({
      title: 'Never hide pigment under skin colour',
      text: `You chose “${reply}”. It is a second tattoo, heals to another colour and cannot be matched for years. Leave the edge, or let it be lightened later.`,
    }),
  },
  other: (_, reply) => ({
    title: 'Not that one',
    text: `You chose “${reply}”. Ask in this order: taken alike? did both edges move? which way is out? real? swollen?`,
  }),
};
