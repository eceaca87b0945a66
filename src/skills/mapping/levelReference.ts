import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawNormalWithin, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { levelReferenceWords, type LevelReferenceGiven } from '#words/skills/levelReference.ts';
import type { Skill } from '../skill.ts';
import { areApart } from './areApart.ts';

type Given = LevelReferenceGiven;
const toleranceMm = 0.1;
const toHalf = (mm: number) => Math.round(mm * 2) / 2;

const riseMm = ({ corners }: Given) => corners.left.upMm - corners.right.upMm;
const slope = (given: Given) => riseMm(given) / (given.corners.left.alongMm - given.corners.right.alongMm);
const shareMm = (given: Given) => slope(given) * (given.fronts.left.alongMm - given.fronts.right.alongMm);
const rawMm = ({ fronts }: Given) => fronts.left.upMm - fronts.right.upMm;
/** Left minus right, turned so that the higher front counts up. */
const turned = ({ higher }: Given, leftMinusRightMm: number) =>
  higher === 'left' ? leftMinusRightMm : -leftMinusRightMm;
const answerMm = (given: Given) => turned(given, rawMm(given) - shareMm(given));

function deal(draw: Draw): Given {
  const lengthMm = drawWhole(draw, 84, 96);
  const rightMm = drawWhole(draw, 27, 33);
  const leftMm = rightMm + drawWhole(draw, 24, 36);
  const higher = draw() < 0.5 ? 'right' : 'left';
  const rise = (draw() < 0.5 ? -1 : 1) * toHalf(2 + 3 * draw());
  const wanted = (higher === 'left' ? 1 : -1) * (0.5 + 2.2 * draw());
  const frontMm = toHalf(drawNormalWithin(draw, 27, 2, 23, 31));
  const corner = toHalf(8 + 3 * draw());
  return {
    corners: { right: { alongMm: 0, upMm: corner }, left: { alongMm: lengthMm, upMm: corner + rise } },
    fronts: {
      right: { alongMm: rightMm, upMm: frontMm },
      left: { alongMm: leftMm, upMm: frontMm + toHalf(wanted + (rise * (leftMm - rightMm)) / lengthMm) },
    },
    higher,
  };
}

const slips: Skill<Given>['slips'] = [
  { id: 'forgot-the-slope', credit: 0.4, value: (given) => turned(given, rawMm(given)) },
  { id: 'wrong-sign', credit: 0.5, value: (given) => turned(given, rawMm(given) + shareMm(given)) },
  { id: 'whole-rise', credit: 0.5, value: (given) => turned(given, rawMm(given) - riseMm(given)) },
  { id: 'half-the-rise', credit: 0.5, value: (given) => turned(given, rawMm(given) - riseMm(given) / 2) },
  { id: 'slope-alone', credit: 0.2, value: (given) => Math.abs(shareMm(given)) },
];

/**
 * Two fronts against a sloping line: heights over the thread minus the line's own change between them,
 * straight up.
 * The commonest slip is dealt positive, because a phone's number keys may have no minus sign.
 */
export const levelReference: Skill<Given> = {
  id: 'level-reference',
  version: 1,
  words: levelReferenceWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      const wrong = slips.map(({ value }) => Number(value(given)));
      if (answerMm(given) > 0.35 && (wrong[0] ?? 0) > 0.25 && areApart(answerMm(given), wrong, toleranceMm))
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
    const { corners, fronts, higher } = given;
    return [
      {
        id: 'slope',
        values: {
          leftMm: corners.left.upMm,
          rightMm: corners.right.upMm,
          lengthMm: corners.left.alongMm,
          slope: slope(given),
        },
      },
      {
        id: 'share',
        values: {
          slope: slope(given),
          leftAlongMm: fronts.left.alongMm,
          rightAlongMm: fronts.right.alongMm,
          shareMm: shareMm(given),
        },
      },
      { id: 'raw', values: { leftMm: fronts.left.upMm, rightMm: fronts.right.upMm, rawMm: rawMm(given) } },
      {
        id: 'answer',
        values: {
          rawMm: rawMm(given),
          shareMm: shareMm(given),
          differenceMm: rawMm(given) - shareMm(given),
          higher,
          answerMm: answerMm(given),
        },
      },
    ];
  },
  facts: [],
};
