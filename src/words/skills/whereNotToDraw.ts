import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

/** Parts of the outline a learner can point at. */
export const outlineParts = ['bare-tail', 'off-bone', 'thin-on', 'bare-front', 'none'] as const;
export type OutlinePart = (typeof outlineParts)[number];

/**
 * Millimetres from the outline's front. Where `leavesBoneMm` or `hairToMm` is the whole length, there is no
 * such end.
 */
export type WhereNotGiven = Readonly<{
  outlineMm: number;
  hairFromMm: number;
  hairToMm: number;
  thinFromMm: number;
  leavesBoneMm: number;
}>;

const isPart = (code: string): code is OutlinePart => outlineParts.some((part) => part === code);
const reachesEnd = (given: WhereNotGiven, mm: number) => mm >= given.outlineMm;

/** Where a part begins and ends. */
export function partEnds(
  given: WhereNotGiven,
  part: Exclude<OutlinePart, 'none'>,
): readonly [number, number] {
  const { outlineMm, hairFromMm, hairToMm, thinFromMm, leavesBoneMm } = given;
  if (part === 'bare-front') return [0, hairFromMm];
  const from = { 'bare-tail': hairToMm, 'off-bone': leavesBoneMm, 'thin-on': thinFromMm }[part];
  return [from, outlineMm];
}

/** The part that has neither hair nor bone under it. */
export function partOnNothing(given: WhereNotGiven): OutlinePart {
  if (reachesEnd(given, given.hairToMm) || reachesEnd(given, given.leavesBoneMm)) return 'none';
  return given.hairToMm > given.leavesBoneMm ? 'bare-tail' : 'off-bone';
}

/** "30.0 to 42.0 mm" */
const ends = (given: WhereNotGiven, part: Exclude<OutlinePart, 'none'>) =>
  partEnds(given, part)
    .map((mm) => fixed(mm))
    .join(' to ');

function truth(given: WhereNotGiven): string {
  const { hairToMm, leavesBoneMm } = given;
  const hair = reachesEnd(given, hairToMm) ? 'Hair runs to the end' : `Hair ends at ${fixed(hairToMm)} mm`;
  const bone = reachesEnd(given, leavesBoneMm)
    ? 'the lower edge stays on the bone'
    : `the lower edge leaves the bone at ${fixed(leavesBoneMm)} mm`;
  const part = partOnNothing(given);
  return `${hair}, and ${bone}. ${part === 'none' ? 'So every part has one or the other under it.' : `Both are gone only from ${ends(given, part)} mm.`}`;
}

const bone = ({ leavesBoneMm, outlineMm }: WhereNotGiven) =>
  leavesBoneMm >= outlineMm ? 'nowhere' : fixed(leavesBoneMm);

export const whereNotToDrawWords: ProblemWords<WhereNotGiven> = {
  name: 'Where not to draw',
  summary: 'Find the part of a planned outline that has neither hair nor bone under it.',
  question: () => 'Which part of this outline sits on nothing?',
  givens: () => [
    'You drew the outline upright, laid a ruler along it from the front, and felt for the edge of the bone.',
    'A shape sits on hair or on bone. Thin hair counts as hair. Name the part that has neither.',
  ],
  table: (given) => ({
    caption: 'From the front of the outline, mm',
    head: ['Reading', 'Place'],
    rows: [
      ['outline ends', fixed(given.outlineMm)],
      ['hair begins', fixed(given.hairFromMm)],
      ['hair is thin from', fixed(given.thinFromMm)],
      ['hair ends', fixed(given.hairToMm)],
      ['lower edge leaves the bone', bone(given)],
    ],
  }),
  label: 'Sits on nothing',
  option: (code, given) =>
    isPart(code) && code !== 'none' ? `From ${ends(given, code)} mm` : 'No part of it',
  steps: {
    hair: {
      hint: 'Where is there no hair at all? Thin hair is hair.',
      done: (v) => `Without hair: ${say(v, 'bare')}.`,
    },
    bone: {
      hint: 'Where does the lower edge hang below the edge of the bone?',
      done: (v) => `Off the bone: ${say(v, 'off')}.`,
    },
    both: {
      hint: 'Which millimetres stand in both lists?',
      done: (v) => `In both: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'all-bare-skin': (given, reply) => ({
      title: 'Bare, but there is bone under part of it',
      text: `You chose “${reply}”. That is all the bare skin at the tail. ${truth(given)} Bare skin on bone can carry a shape, if she wants it and the skin is unchanged; where anybody is unsure of the skin, a doctor looks first.`,
    }),
    'all-off-bone': (given, reply) => ({
      title: 'Off the bone, but hair is there',
      text: `You chose “${reply}”. That is all that hangs below the bone. ${truth(given)} Where her own hair grows, the shape has something to follow.`,
    }),
    'thin-is-not-bare': (given, reply) => ({
      title: 'Thin hair is still hair',
      text: `You chose “${reply}”. It begins where the hair gets thin. ${truth(given)}`,
    }),
    'front-is-on-bone': (given, reply) => ({
      title: 'The front lies on the bone',
      text: `You chose “${reply}”. There is no hair there, but the bone of the brow is under it. ${truth(given)}`,
    }),
    'saw-nothing': (given, reply) => ({
      title: 'One part has neither',
      text: `You chose “${reply}”. ${truth(given)} Drawn there, it moves with the face and nothing hides its edge.`,
    }),
  },
  other: (given, reply) => ({ title: 'Not that part', text: `You chose “${reply}”. ${truth(given)}` }),
};
