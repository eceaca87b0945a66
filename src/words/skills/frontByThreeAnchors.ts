import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { FrontAnchor } from '#lib/mapping/placing/anchorDistances.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths } from './say.ts';

/** Places on one level ruler, mm; the client's right has the smaller readings. */
export type FrontByThreeAnchorsGiven = Readonly<{
  anchor: FrontAnchor;
  midlineMm: number;
  tipMm: number;
  placesMm: Readonly<Record<FrontAnchor, Readonly<Record<Side, number>>>>;
}>;

export const rulerAnchorWords: Readonly<Record<FrontAnchor, string>> = {
  'nose-wing': 'nose wing',
  'nostril-middle': 'middle of the nostril',
  'inner-corner': 'inner eye corner',
};
/** The anchor that is mistaken for the one asked for. */
export const otherAnchor: Readonly<Record<FrontAnchor, FrontAnchor>> = {
  'nose-wing': 'inner-corner',
  'inner-corner': 'nose-wing',
  'nostril-middle': 'nose-wing',
};
export const rulerRows = [
  'nose-wing',
  'nostril-middle',
  'inner-corner',
] as const satisfies readonly FrontAnchor[];

const distance = ({ anchor, midlineMm, placesMm }: FrontByThreeAnchorsGiven, side: Side) =>
  Math.abs(placesMm[anchor][side] - midlineMm);
const both = (given: FrontByThreeAnchorsGiven) =>
  `${fixed(distance(given, 'right'))} mm on the right and ${fixed(distance(given, 'left'))} mm on the left`;

export const frontByThreeAnchorsWords: ProblemWords<FrontByThreeAnchorsGiven> = {
  name: 'Front by three anchors',
  summary: 'Find the one distance at which both fronts start, by a named anchor, on a nose that leans.',
  question: ({ anchor }) =>
    `By the ${rulerAnchorWords[anchor]}, how far from the midline does each front start?`,
  givens: ({ midlineMm, tipMm, anchor }) => [
    `A ruler lies level across the face. The midline crosses it at ${fixed(midlineMm)} mm. The tip of the nose stands at ${fixed(tipMm)} mm.`,
    `The client chose the ${rulerAnchorWords[anchor]} as her anchor. Both fronts start equally far from the midline.`,
  ],
  table: ({ placesMm }) => ({
    caption: 'Readings on the ruler, mm',
    head: ['Mark', 'Right', 'Left'],
    rows: rulerRows.map((name) => [
      rulerAnchorWords[name],
      fixed(placesMm[name].right),
      fixed(placesMm[name].left),
    ]),
  }),
  label: 'Distance of each front from the midline',
  option: (code) => code,
  steps: {
    right: {
      hint: 'How far is the anchor from the midline on the client’s right?',
      done: (v) =>
        `On the right: ${sayTenths(v, 'midlineMm')} − ${sayTenths(v, 'readingMm')} = ${sayTenths(v, 'rightMm')} mm.`,
    },
    left: {
      hint: 'How far is it on her left?',
      done: (v) =>
        `On the left: ${sayTenths(v, 'readingMm')} − ${sayTenths(v, 'midlineMm')} = ${sayTenths(v, 'leftMm')} mm.`,
    },
    answer: {
      hint: 'One distance for both sides: the mean of the two.',
      done: (v) =>
        `Both fronts by the ${say(v, 'anchor')}: (${sayTenths(v, 'rightMm')} + ${sayTenths(v, 'leftMm')}) ÷ 2 = ${sayTenths(v, 'answerMm')} mm.`,
    },
  },
  right: (given, reply) =>
    `Both fronts start ${reply} from the midline. The anchor itself stands ${both(given)}; the lean drops out of the mean.`,
  slips: {
    'right-only': (given, reply) => ({
      title: 'Close: that is the right side alone',
      text: `${reply} is the distance of her right ${rulerAnchorWords[given.anchor]}. On her left it is ${fixed(distance(given, 'left'))} mm. One side carries the whole lean: take the mean of both.`,
    }),
    'left-only': (given, reply) => ({
      title: 'Close: that is the left side alone',
      text: `${reply} is the distance of her left ${rulerAnchorWords[given.anchor]}. On her right it is ${fixed(distance(given, 'right'))} mm. One side carries the whole lean: take the mean of both.`,
    }),
    'from-the-tip': ({ tipMm, midlineMm }, reply) => ({
      title: 'That is measured from the nose tip',
      text: `${reply} runs from the tip at ${fixed(tipMm)} mm. The tip leans: the midline is at ${fixed(midlineMm)} mm, and every front is measured from there.`,
    }),
    'other-anchor': ({ anchor }, reply) => ({
      title: 'Close: that is another anchor',
      text: `${reply} is the distance by the ${rulerAnchorWords[otherAnchor[anchor]]}. She chose the ${rulerAnchorWords[anchor]}: read its own row.`,
    }),
    'whole-width': ({ anchor, placesMm }, reply) => ({
      title: 'Close: that is from side to side',
      text: `${reply} is the whole width, from ${fixed(placesMm[anchor].right)} to ${fixed(placesMm[anchor].left)} mm. Each front starts half of that from the midline.`,
    }),
  },
  other: ({ anchor, midlineMm }, reply) => ({
    title: 'Not there yet',
    text: `${reply} does not follow from any way of working we know. Measure the ${rulerAnchorWords[anchor]} from the midline at ${fixed(midlineMm)} mm, on both sides, and take the mean.`,
  }),
};
