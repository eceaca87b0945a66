import { widened } from '#lib/colour/coverage/widened.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { wideningWords, type WideningGiven } from '#words/skills/widening.ts';
import { areApart } from '../mapping/areApart.ts';
import type { Skill } from '../skill.ts';

type Given = WideningGiven;

const tolerance = 0.5;
const ratio = ({ freshMm, healedMm }: Given) => healedMm / freshMm;

function percent({ freshPercent, freshMm, healedMm }: Given, crossing: boolean): number {
  const share = widened(freshPercent / 100, freshMm, healedMm, crossing);
  if (share === undefined) throw new Error('A problem was dealt without a share.');
  return 100 * share;
}
const right = (given: Given) => percent(given, given.isCrossing);

function deal(draw: Draw): Given {
  const freshMm = drawWhole(draw, 14, 22) / 100;
  return {
    freshPercent: drawWhole(draw, 15, 40),
    freshMm,
    healedMm: Number((freshMm + drawWhole(draw, 6, 18) / 100).toFixed(2)),
    isCrossing: draw() < 0.5,
  };
}

const slips: Skill<Given>['slips'] = [
  { id: 'other-way', credit: 0.5, value: (given) => percent(given, !given.isCrossing) },
  { id: 'added-widths', credit: 0, value: (given) => given.freshPercent * (1 + ratio(given)) },
  { id: 'added-per-cent', credit: 0.2, value: (given) => given.freshPercent + 100 * (ratio(given) - 1) },
  { id: 'gain-only', credit: 0.5, value: (given) => right(given) - given.freshPercent },
];

/**
 * Share covered after widening, from the share before. Dealt again until no wrong method gives the right
 * answer.
 */
export const widening: Skill<Given> = {
  id: 'widening',
  version: 1,
  words: wideningWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (
        percent(given, false) < 95 &&
        areApart(
          right(given),
          slips.map(({ value }) => Number(value(given))),
          tolerance,
        )
      )
        return given;
    }
  },
  answer: (given) => ({
    kind: 'number',
    range: rangeAround(right(given), tolerance, 1),
    exact: right(given),
    unit: '%',
  }),
  slips,
  steps: (given) => {
    const { freshPercent, freshMm, healedMm, isCrossing } = given;
    const first = { id: 'ratio', values: { healedMm, freshMm, ratio: ratio(given) } };
    if (!isCrossing)
      return [first, { id: 'times', values: { freshPercent, ratio: ratio(given), answer: right(given) } }];
    const bare = 1 - freshPercent / 100;
    return [
      first,
      { id: 'bare', values: { freshPercent, bare } },
      {
        id: 'power',
        values: { bare, ratio: ratio(given), left: bare ** ratio(given), answer: right(given) },
      },
    ];
  },
  facts: ['lines-widen', 'stroke-spread-mm'],
};
