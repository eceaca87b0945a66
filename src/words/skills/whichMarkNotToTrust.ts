import type { ProblemWords } from './problemWords.ts';
import { say, short } from './say.ts';
import { fixed } from '../number.ts';

export const listedMarks = [
  'inner-corner',
  'pupil',
  'outer-corner',
  'nasion',
  'nose-wing',
  'nose-base',
  'chin',
] as const;
export type ListedMark = (typeof listedMarks)[number];
/** What can be blamed. The nose wings and the nose base move together: one answer. */
export const suspects = ['inner-corner', 'pupil', 'outer-corner', 'nasion', 'nose', 'chin', 'none'] as const;
export type Suspect = (typeof suspects)[number];

export type WhichMarkGiven = Readonly<{
  /** Where each mark, or the middle of each pair, stands on a level ruler. */
  placesMm: Readonly<Record<ListedMark, number>>;
  outerWidthMm: number;
  /** Marks further than this from the middle one are out. */
  limitMm: number;
}>;

export const listedMarkWords: Readonly<Record<ListedMark, string>> = {
  'inner-corner': 'inner eye corners, middle',
  pupil: 'pupils, middle',
  'outer-corner': 'outer eye corners, middle',
  nasion: 'nose root',
  'nose-wing': 'nose wings, middle',
  'nose-base': 'nose base',
  chin: 'chin',
};

const suspectWords: Readonly<Record<Suspect, string>> = {
  'inner-corner': 'The inner eye corners',
  pupil: 'The pupils',
  'outer-corner': 'The outer eye corners',
  nasion: 'The nose root',
  nose: 'The nose wings and the nose base',
  chin: 'The chin',
  none: 'None: all of them agree',
};

const isSuspect = (code: string): code is Suspect => suspects.some((name) => name === code);
const middleMark = ({ placesMm }: WhichMarkGiven) => Object.values(placesMm).sort((a, b) => a - b)[3] ?? 0;

/** How far the blamed mark stands from the middle one, in words. */
function stands(given: WhichMarkGiven, name: ListedMark): string {
  const away = Math.abs(given.placesMm[name] - middleMark(given));
  const verdict = away > given.limitMm ? 'too far' : `inside the ${short(given.limitMm)} mm`;
  return `at ${fixed(given.placesMm[name])} mm, ${fixed(away)} mm from the middle one: ${verdict}`;
}

/** What really stands out, or that nothing does. */
function truth(given: WhichMarkGiven): string {
  const out = listedMarks.filter(
    (name) => Math.abs(given.placesMm[name] - middleMark(given)) > given.limitMm,
  );
  if (out.length === 0) return 'On this face no mark is out.';
  const name = out[0] ?? 'chin';
  return out.length === 2
    ? `The nose stands out: its wings are ${stands(given, 'nose-wing')}, and the base goes with them.`
    : `What stands out is the ${listedMarkWords[name].replace(', middle', '')}, ${stands(given, name)}.`;
}

export const whichMarkWords: ProblemWords<WhichMarkGiven> = {
  name: 'Which mark not to trust',
  summary: 'Compare where single marks and pair middles stand, and find the one that would pull the midline.',
  question: () => 'Which mark would you not trust for the midline?',
  givens: ({ outerWidthMm, limitMm }) => [
    'For every pair the middle was worked out; single marks were read as they are. All stand on one level ruler.',
    `The outer eye corners are ${short(outerWidthMm, 1)} mm apart. Take ${short(limitMm)} mm from the middle one of the seven as the most that an ordinary face scatters.`,
  ],
  table: ({ placesMm }) => ({
    caption: 'Place on the ruler, mm',
    head: ['Mark', 'Place'],
    rows: listedMarks.map((name) => [listedMarkWords[name], fixed(placesMm[name])]),
  }),
  label: 'Do not trust',
  option: (code) => (isSuspect(code) ? suspectWords[code] : code),
  steps: {
    order: {
      hint: 'Put the seven places in order and find the middle one. A mark that is out cannot move it far.',
      done: (v) => `In order: ${say(v, 'inOrder')}. The middle one is ${say(v, 'middleMm', 1)} mm.`,
    },
    furthest: {
      hint: 'How far is each from the middle one? Only the distance counts, not the size of the reading.',
      done: (v) =>
        `Furthest from it: ${say(v, 'furthest')}, ${say(v, 'awayMm', 1)} mm away. The most that counts as ordinary is ${say(v, 'limitMm')} mm.`,
    },
    decide: {
      hint: 'Is the furthest one beyond the limit? If the nose is, its wings and base go together.',
      done: (v) => `Not to trust: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'saw-none': (given, reply) => ({
      title: 'One of them does not agree',
      text: `You chose “${reply}”. ${truth(given)} A midline that counts it would be pulled to that side.`,
    }),
    'widest-pair': (given, reply) => ({
      title: 'That is the widest pair, not the worst',
      text: `You chose “${reply}”. They are ${short(given.outerWidthMm, 1)} mm apart, but a width says nothing about the middle. Their middle is ${stands(given, 'outer-corner')}. ${truth(given)}`,
    }),
    'nose-by-habit': (given, reply) => ({
      title: 'The nose often leans; this one does not',
      text: `You chose “${reply}”. Here the wings are ${stands(given, 'nose-wing')}, and the base agrees. Look before you blame it. ${truth(given)}`,
    }),
    'far-from-the-eyes': (given, reply) => ({
      title: 'Far down the face is not far off the line',
      text: `You chose “${reply}”. It is far from the eyes, and that even helps to fix the direction of the line. It stands ${stands(given, 'chin')}. ${truth(given)}`,
    }),
    'single-mark': (given, reply) => ({
      title: 'A single mark can be a good one',
      text: `You chose “${reply}”. It has no partner, but it stands ${stands(given, 'nasion')}. ${truth(given)}`,
    }),
    'eyes-move': (given, reply) => ({
      title: 'Eyes move, but these agree',
      text: `You chose “${reply}”. A glance to the side would show here. Their middle is ${stands(given, 'pupil')}. ${truth(given)}`,
    }),
    'nearest-to-the-nose': (given, reply) => ({
      title: 'Next to the nose, but not moved by it',
      text: `You chose “${reply}”. The corners are held by the eye sockets, not by the nose. Their middle is ${stands(given, 'inner-corner')}. ${truth(given)}`,
    }),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${truth(given)}` }),
};
