import { repeatabilityMm, technicalError } from '#lib/mapping/uncertainty/technicalError.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawNormalWithin, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { fixed, signed } from '#words/number.ts';
import { ownTechnicalErrorWords, type OwnTechnicalErrorGiven } from '#words/skills/ownTechnicalError.ts';
import type { Skill } from '../skill.ts';
import { areApart } from './areApart.ts';

type Given = OwnTechnicalErrorGiven;

const toleranceMm = 0.1;
const tenths = (mm: number) => Math.round(mm * 10) / 10;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Differences as they are read off the sheet: whole tenths. */
const differences = ({ pairs }: Given) => pairs.map(({ firstMm, secondMm }) => tenths(secondMm - firstMm));
const squaresSum = (given: Given) => differences(given).reduce((sum, mm) => sum + mm * mm, 0);

function answerMm({ pairs }: Given): number {
  const fit = technicalError(pairs);
  if (!fit.ok) throw new Error('A problem was dealt without pairs.');
  return fit.temMm;
}

/** Standard deviation of all readings together: the wrong method that takes the heights for error. */
function spreadOfAll({ pairs }: Given): number {
  const all = pairs.flatMap(({ firstMm, secondMm }) => [firstMm, secondMm]);
  const middle = mean(all);
  return Math.sqrt(all.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (all.length - 1));
}

/** Readings of points that were not marked first: they miss by millimetres. */
function deal(draw: Draw): Given {
  const count = drawWhole(draw, 4, 5);
  const errorMm = 1 + 1.2 * draw();
  const pairs = Array.from({ length: count }, () => {
    const heightMm = 20 + 25 * draw();
    const read = () => tenths(heightMm + drawNormalWithin(draw, 0, errorMm, -4, 4));
    return { firstMm: read(), secondMm: read() };
  });
  return { pairs };
}

const slips: Skill<Given>['slips'] = [
  { id: 'forgot-two', credit: 0.5, value: (given) => Math.SQRT2 * answerMm(given) },
  { id: 'all-readings', credit: 0, value: spreadOfAll },
  { id: 'mean-difference', credit: 0.4, value: (given) => mean(differences(given).map(Math.abs)) },
  { id: 'repeatability', credit: 0.5, value: (given) => repeatabilityMm(answerMm(given)) },
  { id: 'no-root', credit: 0.5, value: (given) => answerMm(given) ** 2 },
];

/** Technical error from a few pairs, √(Σd²/2N). Dealt again until every wrong method gives another answer. */
export const ownTechnicalError: Skill<Given> = {
  id: 'own-technical-error',
  version: 1,
  words: ownTechnicalErrorWords,
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
    const count = given.pairs.length;
    const found = differences(given);
    const sum = squaresSum(given);
    return [
      { id: 'differences', values: { differences: found.map((mm) => signed(mm)).join(', ') } },
      { id: 'squares', values: { squares: found.map((mm) => fixed(mm * mm, 2)).join(' + '), sum } },
      { id: 'halve', values: { count, sum, twice: 2 * count, square: sum / (2 * count) } },
      { id: 'root', values: { square: sum / (2 * count), answerMm: answerMm(given) } },
    ];
  },
  facts: ['repeat-factor', 'pairs-for-own-error', 'unmarked-disagreement-mm'],
};
