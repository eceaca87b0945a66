import type { Side } from '#lib/mapping/marks/markSet.ts';
import { archOfEyeWidth, archTwoThirds } from '#lib/mapping/numbers/arch.ts';
import { goldenShare } from '#lib/mapping/placing/goldenShare.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawNormalWithin, drawOne, type Draw } from '#lib/quantities/seed.ts';
import {
  archByRuleWords,
  askedArchRules,
  settledLine,
  type ArchByRuleGiven,
  type AskedArchRule,
} from '#words/skills/archByRule.ts';
import type { Skill } from '../skill.ts';
import { areApart } from './areApart.ts';

type Given = ArchByRuleGiven;
type Line = Readonly<{ startMm: number; endMm: number }>;

const toleranceMm = 0.1;
const shares: Readonly<Record<AskedArchRule, number>> = {
  'golden-from-front': goldenShare,
  'two-thirds': archTwoThirds,
  women: archOfEyeWidth.women,
};
const mistaken: Readonly<Record<AskedArchRule, number>> = {
  'golden-from-front': archTwoThirds,
  'two-thirds': goldenShare,
  women: archOfEyeWidth.models,
};
const at = ({ startMm, endMm }: Line, share: number) => startMm + share * (endMm - startMm);
const sideLine = ({ asked, brows, eyes }: Given, side: Side): Line =>
  asked === 'women'
    ? { startMm: eyes[side].innerMm, endMm: eyes[side].outerMm }
    : { startMm: brows[side].frontMm, endMm: brows[side].tailMm };
const answerMm = (given: Given) => at(settledLine(given), shares[given.asked]);

/**
 * Right and left about one mean, apart by less than anyone could show. Whole even tenths apart, so that the
 * mean is a whole tenth.
 */
function pair(draw: Draw, mean: number, sd: number, lo: number, hi: number): Readonly<Record<Side, number>> {
  const middle = Math.round(10 * drawNormalWithin(draw, mean, sd, lo, hi));
  const half = Math.round(10 * (draw() < 0.5 ? -1 : 1) * (0.2 + 0.4 * draw()));
  return { right: (middle + half) / 10, left: (middle - half) / 10 };
}

function deal(draw: Draw): Given {
  const front = pair(draw, 14.5, 1.6, 11, 18);
  const tail = pair(draw, 57, 2.4, 52, 63);
  const inner = pair(draw, 16.5, 1.2, 14, 19);
  const outer = pair(draw, 45.5, 1.8, 42, 49);
  const brow = (side: Side) => ({ frontMm: front[side], tailMm: tail[side] });
  const eye = (side: Side) => ({ innerMm: inner[side], outerMm: outer[side] });
  return {
    brows: { right: brow('right'), left: brow('left') },
    eyes: { right: eye('right'), left: eye('left') },
    asked: drawOne<AskedArchRule>(draw, askedArchRules),
  };
}

const slips: Skill<Given>['slips'] = [
  { id: 'from-the-far-end', credit: 0.4, value: (given) => at(settledLine(given), 1 - shares[given.asked]) },
  { id: 'forgot-the-start', credit: 0.5, value: (given) => answerMm(given) - settledLine(given).startMm },
  { id: 'right-alone', credit: 0.6, value: (given) => at(sideLine(given, 'right'), shares[given.asked]) },
  { id: 'left-alone', credit: 0.6, value: (given) => at(sideLine(given, 'left'), shares[given.asked]) },
  { id: 'other-rule', credit: 0.4, value: (given) => at(settledLine(given), mistaken[given.asked]) },
];

/**
 * One arch for both sides by a named rule: settle, take the share of the length, add where the length starts.
 */
export const archByRule: Skill<Given> = {
  id: 'arch-by-rule',
  version: 1,
  words: archByRuleWords,
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
    const { startMm, endMm } = settledLine(given);
    const isEye = given.asked === 'women';
    const right = sideLine(given, 'right');
    const left = sideLine(given, 'left');
    return [
      {
        id: 'settle',
        values: {
          startName: isEye ? 'inner corner' : 'front',
          endName: isEye ? 'outer corner' : 'tail',
          startMm,
          endMm,
          startRightMm: right.startMm,
          startLeftMm: left.startMm,
          endRightMm: right.endMm,
          endLeftMm: left.endMm,
        },
      },
      { id: 'length', values: { startMm, endMm, lengthMm: endMm - startMm } },
      {
        id: 'share',
        values: {
          shareText: { 'golden-from-front': '0.618', 'two-thirds': 'two thirds', women: '0.929' }[
            given.asked
          ],
          lengthMm: endMm - startMm,
          partMm: answerMm(given) - startMm,
        },
      },
      { id: 'answer', values: { startMm, partMm: answerMm(given) - startMm, answerMm: answerMm(given) } },
    ];
  },
  facts: ['golden-share', 'arch-two-thirds', 'arch-women-of-eye-width', 'arch-models-of-eye-width'],
};
