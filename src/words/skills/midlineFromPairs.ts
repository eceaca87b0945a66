import type { Side } from '#lib/mapping/marks/markSet.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say, sayTenths, short } from './say.ts';

/** Two readings on one ruler, whose 0 lies beyond the client's right eye. */
export type PairOnRuler = Readonly<{ rightMm: number; leftMm: number }>;
export type RulerPair = 'innerCorner' | 'outerCorner' | 'pupil' | 'noseWing' | 'browFront';

export type MidlineFromPairsGiven = Readonly<{
  pairs: Readonly<Record<RulerPair, PairOnRuler>>;
  leans: Side;
}>;

export const rulerPairWords: Readonly<Record<RulerPair, string>> = {
  innerCorner: 'inner eye corners',
  outerCorner: 'outer eye corners',
  pupil: 'pupils',
  noseWing: 'nose wings',
  browFront: 'brow fronts',
};

const middleOf = ({ rightMm, leftMm }: PairOnRuler) => short((rightMm + leftMm) / 2);

export const midlineFromPairsWords: ProblemWords<MidlineFromPairsGiven> = {
  name: 'Midline from pairs',
  summary: 'Read pairs of marks on one ruler and find where the midline crosses it.',
  question: () => 'Where does the midline cross the ruler?',
  givens: ({ leans }) => [
    'A ruler lies level across the face. Its 0 is beyond the client’s right eye, so every reading grows towards her left.',
    `Her nose leans to her ${leans}, and her brows follow it.`,
  ],
  table: ({ pairs }) => ({
    caption: 'Readings on the ruler, mm',
    head: ['Mark', 'Right', 'Left'],
    rows: (['innerCorner', 'pupil', 'outerCorner', 'noseWing', 'browFront'] as const).map((name) => [
      rulerPairWords[name],
      fixed(pairs[name].rightMm),
      fixed(pairs[name].leftMm),
    ]),
  }),
  label: 'Midline, reading on the ruler',
  option: (code) => code,
  steps: {
    'leave-out': {
      hint: 'First decide which pairs may speak. A leaning nose takes its wings with it, and brows follow the nose.',
      done: (v) =>
        `Leave out the nose wings (middle ${say(v, 'noseMm')}) and the brow fronts (middle ${say(v, 'browMm')}): the nose leans and the brows follow it.`,
    },
    inner: {
      hint: 'The middle of a pair is its right reading plus its left reading, halved.',
      done: (v) =>
        `Inner eye corners: (${say(v, 'rightMm')} + ${say(v, 'leftMm')}) ÷ 2 = ${say(v, 'middleMm')} mm.`,
    },
    pupil: {
      hint: 'Do the same for the pupils.',
      done: (v) => `Pupils: (${say(v, 'rightMm')} + ${say(v, 'leftMm')}) ÷ 2 = ${say(v, 'middleMm')} mm.`,
    },
    outer: {
      hint: 'Do the same for the outer eye corners.',
      done: (v) =>
        `Outer eye corners: (${say(v, 'rightMm')} + ${say(v, 'leftMm')}) ÷ 2 = ${say(v, 'middleMm')} mm.`,
    },
    mean: {
      hint: 'The three middles differ a little. Take their mean.',
      done: (v) =>
        `Mean of the three middles: (${say(v, 'innerMm')} + ${say(v, 'pupilMm')} + ${say(v, 'outerMm')}) ÷ 3 = ${sayTenths(v, 'answerMm')} mm.`,
    },
  },
  right: (_, reply) => `The three eye pairs agree on ${reply}. You left out the nose and the brows.`,
  slips: {
    'used-nose': ({ pairs, leans }, reply) => ({
      title: 'Close: the nose is in it',
      text: `You took middles and their mean, and that is the way. But ${reply} counts the nose wings too. Their middle is ${middleOf(pairs.noseWing)} mm, because the nose leans to her ${leans}. It pulls the midline along.`,
    }),
    'used-brows': ({ pairs }, reply) => ({
      title: 'Close: the brows are in it',
      text: `Middles and mean are right. But ${reply} counts the brow fronts, and the brows are what you are going to draw. Their middle is ${middleOf(pairs.browFront)} mm. Brows follow a leaning nose, so they never help to find the midline.`,
    }),
    'used-all': (_, reply) => ({
      title: 'Close: that is the mean of all five pairs',
      text: `Every middle is worked out well, but ${reply} trusts the nose wings and the brow fronts as much as the eyes. Keep the three eye pairs.`,
    }),
    'one-pair': (_, reply) => ({
      title: 'Close: that is the inner corners alone',
      text: `${reply} is the middle of one pair, and it is right as far as it goes. No eye is placed exactly. The pupils and the outer corners also have a middle; the mean of three is steadier than one.`,
    }),
    'half-width': (_, reply) => ({
      title: 'That is half a width',
      text: `${reply} is left minus right, halved: how far the eyes are from the middle, not where the middle is. On a ruler, add the two readings before you halve.`,
    }),
    'brow-middle': (_, reply) => ({
      title: 'That is the middle of the brow fronts',
      text: `${reply} lies between the brows she has now. If they sit off to one side, the new ones will too. Find the middle from the eyes, then look at the brows.`,
    }),
  },
  other: (_, reply) => ({
    title: 'Not there yet',
    text: `${reply} does not follow from any way of working we know. Take one eye pair first: add its two readings, then halve.`,
  }),
};
