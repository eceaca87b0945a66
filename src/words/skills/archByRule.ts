import type { Side } from '#lib/mapping/marks/markSet.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

export const askedArchRules = ['golden-from-front', 'two-thirds', 'women'] as const;
export type AskedArchRule = (typeof askedArchRules)[number];

export type ArchByRuleGiven = Readonly<{
  /** Front and tail of each side, from the midline. */
  brows: Readonly<Record<Side, Readonly<{ frontMm: number; tailMm: number }>>>;
  /** Inner and outer eye corner of each side, from the midline. */
  eyes: Readonly<Record<Side, Readonly<{ innerMm: number; outerMm: number }>>>;
  asked: AskedArchRule;
}>;

const questions: Readonly<Record<AskedArchRule, string>> = {
  'golden-from-front': 'Where does the golden section put the arch, counted from the front?',
  'two-thirds': 'Where does the rule of two thirds put the arch?',
  women: 'Where does the rule in eye widths put the arch?',
};

const ruleLines: Readonly<Record<AskedArchRule, string>> = {
  'golden-from-front': 'Your rule: 61.8 % of the brow’s length, counted from the front.',
  'two-thirds': 'Your rule: two thirds of the brow’s length, counted from the front.',
  women: 'Your rule: 0.929 of the eye’s width, counted from the inner eye corner, as measured on women.',
};

const isEye = ({ asked }: ArchByRuleGiven) => asked === 'women';
const startName = (given: ArchByRuleGiven) => (isEye(given) ? 'inner eye corner' : 'front');
const endName = (given: ArchByRuleGiven) => (isEye(given) ? 'outer eye corner' : 'tail');
const spanName = (given: ArchByRuleGiven) => (isEye(given) ? 'eye’s width' : 'brow’s length');
const shareText = ({ asked }: ArchByRuleGiven) =>
  ({ 'golden-from-front': '0.618', 'two-thirds': 'two thirds', women: '0.929' })[asked];

/** Where the rule starts and how long its line is, settled: the mean of both sides. */
export function settledLine(given: ArchByRuleGiven): Readonly<{ startMm: number; endMm: number }> {
  const { brows, eyes } = given;
  return isEye(given)
    ? {
        startMm: (eyes.right.innerMm + eyes.left.innerMm) / 2,
        endMm: (eyes.right.outerMm + eyes.left.outerMm) / 2,
      }
    : {
        startMm: (brows.right.frontMm + brows.left.frontMm) / 2,
        endMm: (brows.right.tailMm + brows.left.tailMm) / 2,
      };
}

/** "Settled: front 14.2, tail 57.0 mm." */
function settledText(given: ArchByRuleGiven): string {
  const { startMm, endMm } = settledLine(given);
  return `Settled for both sides: ${startName(given)} ${short(startMm)}, ${endName(given)} ${short(endMm)} mm.`;
}

function oneSide(given: ArchByRuleGiven, side: Side, reply: string) {
  return {
    title: `That is the ${side} side alone`,
    text: `Close: ${reply} is what the ${side} marks give by themselves. The sides are not shown to differ, so take the mean first. ${settledText(given)}`,
  };
}

export const archByRuleWords: ProblemWords<ArchByRuleGiven> = {
  name: 'Arch by rule',
  summary: 'Settle one front and one tail, then place one arch for both sides by the rule you are told.',
  question: ({ asked }) => questions[asked],
  givens: ({ asked }) => [
    'You measured both sides from the midline. No difference between left and right is shown to be real.',
    `${ruleLines[asked]} Settle one value for both sides first, the mean. Give one arch for both sides.`,
  ],
  table: ({ brows, eyes }) => ({
    caption: 'Distance from the midline, mm',
    head: ['Mark', 'Right', 'Left'],
    rows: [
      ['front, lower mark', fixed(brows.right.frontMm), fixed(brows.left.frontMm)],
      ['tail', fixed(brows.right.tailMm), fixed(brows.left.tailMm)],
      ['inner eye corner', fixed(eyes.right.innerMm), fixed(eyes.left.innerMm)],
      ['outer eye corner', fixed(eyes.right.outerMm), fixed(eyes.left.outerMm)],
    ],
  }),
  label: 'Distance of the arch from the midline',
  option: (code) => code,
  steps: {
    settle: {
      hint: 'Which two marks does the rule count between? Take the mean of right and left for each.',
      done: (v) =>
        `Settle: ${say(v, 'startName')} (${say(v, 'startRightMm', 1)} + ${say(v, 'startLeftMm', 1)}) ÷ 2 = ${say(v, 'startMm')}, ${say(v, 'endName')} (${say(v, 'endRightMm', 1)} + ${say(v, 'endLeftMm', 1)}) ÷ 2 = ${say(v, 'endMm')} mm.`,
    },
    length: {
      hint: 'How far is it from the first mark to the second?',
      done: (v) =>
        `Length of the line: ${say(v, 'endMm')} − ${say(v, 'startMm')} = ${say(v, 'lengthMm')} mm.`,
    },
    share: {
      hint: 'Take the rule’s share of that length.',
      done: (v) => `Share: ${say(v, 'shareText')} of ${say(v, 'lengthMm')} = ${say(v, 'partMm')} mm.`,
    },
    answer: {
      hint: 'The share counts from the first mark, and your answer counts from the midline.',
      done: (v) =>
        `Add where the line starts: ${say(v, 'startMm')} + ${say(v, 'partMm')} = ${sayTenths(v, 'answerMm')} mm, on both sides.`,
    },
  },
  right: (given, reply) =>
    `${reply}, on both sides. ${settledText(given)} Another rule would put it elsewhere: write down which one you used.`,
  slips: {
    'from-the-far-end': (given, reply) => ({
      title: `That counts from the ${endName(given)}`,
      text: `${reply} is what you get when ${shareText(given)} is counted back from the ${endName(given)}. The rule counts from the ${startName(given)}.`,
    }),
    'forgot-the-start': (given, reply) => ({
      title: `The ${startName(given)} is not at the midline`,
      text: `Close: ${reply} is the share itself, from the ${startName(given)}. The ${startName(given)} already stands ${short(settledLine(given).startMm)} mm out. Add that.`,
    }),
    'right-alone': (given, reply) => oneSide(given, 'right', reply),
    'left-alone': (given, reply) => oneSide(given, 'left', reply),
    'other-rule': (given, reply) => ({
      title: 'That is another rule',
      text: `${reply} comes from ${{ 'golden-from-front': 'two thirds of the length', 'two-thirds': 'the golden section, 61.8 %', women: 'the share measured on models, 0.978' }[given.asked]}. The rule asked for is ${shareText(given)} of the ${spanName(given)}.`,
    }),
  },
  other: (given, reply) => ({
    title: 'Not that',
    text: `You gave ${reply}. ${settledText(given)} Take the share of the ${spanName(given)} and add where it starts.`,
  }),
};
