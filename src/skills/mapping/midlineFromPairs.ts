import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawNormalWithin, type Draw } from '#lib/quantities/seed.ts';
import {
  midlineFromPairsWords,
  type MidlineFromPairsGiven,
  type PairOnRuler,
  type RulerPair,
} from '#words/skills/midlineFromPairs.ts';
import type { Skill } from '../skill.ts';
import { areApart } from './areApart.ts';

type Given = MidlineFromPairsGiven;

const toleranceMm = 0.1;
const eyePairs = ['innerCorner', 'pupil', 'outerCorner'] as const;

const middle = ({ rightMm, leftMm }: PairOnRuler) => (rightMm + leftMm) / 2;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const meanMiddle = ({ pairs }: Given, names: readonly RulerPair[]) =>
  mean(names.map((name) => middle(pairs[name])));
const toHalf = (mm: number) => Math.round(mm * 2) / 2;

/** Readings to half a millimetre, as a ruler gives them. */
function pairAround(middleMm: number, widthMm: number): PairOnRuler {
  return { rightMm: toHalf(middleMm - widthMm / 2), leftMm: toHalf(middleMm + widthMm / 2) };
}

function deal(draw: Draw): Given {
  const midlineMm = 58 + 12 * draw();
  const leans = draw() < 0.5 ? 'right' : 'left';
  const towards = leans === 'right' ? -1 : 1;
  const near = () => midlineMm + drawNormalWithin(draw, 0, 0.6, -1.4, 1.4);
  const leanMm = 3.5 + 3 * draw();
  const innerMm = drawNormalWithin(draw, 33, 2.5, 28, 40);
  const pairs = {
    innerCorner: pairAround(near(), innerMm),
    pupil: pairAround(near(), drawNormalWithin(draw, 63, 3.5, 56, 71)),
    outerCorner: pairAround(near(), innerMm + 52 + 6 * draw()),
    noseWing: pairAround(midlineMm + towards * leanMm, innerMm + 1 + 4 * draw()),
    browFront: pairAround(
      midlineMm + towards * leanMm * (0.45 + 0.25 * draw()),
      drawNormalWithin(draw, 28, 3.4, 21, 36),
    ),
  };
  return { pairs, leans };
}

const answerMm = (given: Given) => meanMiddle(given, eyePairs);

const slips: Skill<Given>['slips'] = [
  { id: 'used-nose', credit: 0.5, value: (given) => meanMiddle(given, [...eyePairs, 'noseWing']) },
  { id: 'used-brows', credit: 0.5, value: (given) => meanMiddle(given, [...eyePairs, 'browFront']) },
  {
    id: 'used-all',
    credit: 0.4,
    value: (given) => meanMiddle(given, [...eyePairs, 'noseWing', 'browFront']),
  },
  { id: 'one-pair', credit: 0.5, value: ({ pairs }) => middle(pairs.innerCorner) },
  {
    id: 'half-width',
    credit: 0.2,
    value: ({ pairs }) => mean(eyePairs.map((name) => (pairs[name].leftMm - pairs[name].rightMm) / 2)),
  },
  { id: 'brow-middle', credit: 0.2, value: ({ pairs }) => middle(pairs.browFront) },
];

/**
 * The midline's place on a level ruler: the mean of the eye pairs' middles. For marks on one level this is
 * the closed form of src/lib/mapping/midline/midline.ts with equal weights. Dealt again until every wrong method
 * gives another answer.
 */
export const midlineFromPairs: Skill<Given> = {
  id: 'midline-from-pairs',
  version: 1,
  words: midlineFromPairsWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (
        areApart(
          answerMm(given),
          slips.map(({ value }) => Number(value(given))),
          toleranceMm,
        )
      )
        return given;
    }
  },
  answer: (given) => ({
    kind: 'number',
    range: rangeAround(answerMm(given), toleranceMm, 1),
    exact: answerMm(given),
    unit: 'mm',
  }),
  slips,
  steps: (given) => {
    const { pairs } = given;
    const one = (id: string, pair: PairOnRuler) => ({ id, values: { ...pair, middleMm: middle(pair) } });
    return [
      { id: 'leave-out', values: { noseMm: middle(pairs.noseWing), browMm: middle(pairs.browFront) } },
      one('inner', pairs.innerCorner),
      one('pupil', pairs.pupil),
      one('outer', pairs.outerCorner),
      {
        id: 'mean',
        values: {
          innerMm: middle(pairs.innerCorner),
          pupilMm: middle(pairs.pupil),
          outerMm: middle(pairs.outerCorner),
          answerMm: answerMm(given),
        },
      },
    ];
  },
  facts: [],
};
