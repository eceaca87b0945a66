import type { FrontAnchor } from '#lib/mapping/placing/anchorDistances.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import {
  frontByThreeAnchorsWords,
  type FrontByThreeAnchorsGiven,
  otherAnchor,
  rulerAnchorWords,
} from '#words/skills/frontByThreeAnchors.ts';
import type { Skill } from '../skill.ts';
import { areApart } from './areApart.ts';

type Given = FrontByThreeAnchorsGiven;
const toleranceMm = 0.1;
const toTenth = (mm: number) => Math.round(mm * 10) / 10;

/** Each side's distance from the midline, and one for both: the mean, as `anchorDistances` takes it. */
function distances({ midlineMm, placesMm }: Given, anchor: FrontAnchor) {
  const right = midlineMm - placesMm[anchor].right;
  const left = placesMm[anchor].left - midlineMm;
  return { right, left, bothMm: (right + left) / 2 };
}
const answerMm = (given: Given) => distances(given, given.anchor).bothMm;

function deal(draw: Draw): Given {
  const anchor = drawOne<FrontAnchor>(draw, ['nose-wing', 'inner-corner', 'nostril-middle']);
  const midlineMm = toTenth(58 + 8 * draw());
  const toHer = draw() < 0.5 ? -1 : 1;
  const leanMm = toHer * toTenth(1.2 + 2.3 * draw());
  const wingMm = toTenth(17.5 + 5 * draw());
  const nostrilMm = toTenth(wingMm * (0.54 + 0.12 * draw()));
  const cornerMm = toTenth(15 + 3.5 * draw());
  const cornerLeanMm = (draw() < 0.5 ? -1 : 1) * toTenth(0.3 + 0.5 * draw());
  const pair = (halfMm: number, offMm: number) => ({
    right: toTenth(midlineMm + offMm - halfMm),
    left: toTenth(midlineMm + offMm + halfMm),
  });
  return {
    anchor,
    midlineMm,
    tipMm: toTenth(midlineMm + leanMm + toHer * (0.8 + draw())),
    placesMm: {
      'nose-wing': pair(wingMm, leanMm),
      'nostril-middle': pair(nostrilMm, leanMm),
      'inner-corner': pair(cornerMm, cornerLeanMm),
    },
  };
}

const slips: Skill<Given>['slips'] = [
  { id: 'right-only', credit: 0.5, value: (given) => distances(given, given.anchor).right },
  { id: 'left-only', credit: 0.5, value: (given) => distances(given, given.anchor).left },
  { id: 'from-the-tip', credit: 0.2, value: ({ anchor, tipMm, placesMm }) => tipMm - placesMm[anchor].right },
  { id: 'other-anchor', credit: 0.4, value: (given) => distances(given, otherAnchor[given.anchor]).bothMm },
  {
    id: 'whole-width',
    credit: 0.5,
    value: ({ anchor, placesMm }) => placesMm[anchor].left - placesMm[anchor].right,
  },
];

/**
 * One distance for both fronts by a named anchor: the mean of its two distances from the midline, in which a
 * lean cancels.
 */
export const frontByThreeAnchors: Skill<Given> = {
  id: 'front-by-three-anchors',
  version: 1,
  words: frontByThreeAnchorsWords,
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
    const { anchor, midlineMm, placesMm } = given;
    const { right, left } = distances(given, anchor);
    return [
      { id: 'right', values: { midlineMm, readingMm: placesMm[anchor].right, rightMm: right } },
      { id: 'left', values: { midlineMm, readingMm: placesMm[anchor].left, leftMm: left } },
      {
        id: 'answer',
        values: { anchor: rulerAnchorWords[anchor], rightMm: right, leftMm: left, answerMm: answerMm(given) },
      },
    ];
  },
  facts: ['front-above-an-anchor', 'fronts-equally-far'],
};
