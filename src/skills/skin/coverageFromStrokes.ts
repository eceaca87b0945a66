import { shareApart, shareAtRandom } from '#lib/colour/coverage/coverage.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import {
  coverageFromStrokesWords,
  type CoverageFromStrokesGiven,
} from '#words/skills/coverageFromStrokes.ts';
import { areApart } from '../mapping/areApart.ts';
import type { Skill } from '../skill.ts';

type Given = CoverageFromStrokesGiven;

const tolerance = 0.5;
/** Areas of the strokes over the area of the brow, in per cent, as if nothing overlapped. */
const load = ({ count, lengthMm, widthMm, areaMm2 }: Given) => (100 * count * lengthMm * widthMm) / areaMm2;
const percent = (given: Given, crossing: boolean) => 100 * (crossing ? shareAtRandom : shareApart)(given);
const right = (given: Given) => percent(given, given.crossing);

function deal(draw: Draw): Given {
  return {
    count: 5 * drawWhole(draw, 8, 24),
    lengthMm: drawWhole(draw, 12, 20) / 2,
    widthMm: drawWhole(draw, 14, 24) / 100,
    areaMm2: 10 * drawWhole(draw, 20, 40),
    crossing: draw() < 0.5,
  };
}

const slips: Skill<Given>['slips'] = [
  { id: 'other-way', credit: 0.5, value: (given) => percent(given, !given.crossing) },
  { id: 'bare', credit: 0.5, value: (given) => 100 - right(given) },
  { id: 'as-share', credit: 0.7, value: (given) => right(given) / 100 },
  { id: 'no-width', credit: 0, value: (given) => load(given) / given.widthMm },
];

/**
 * Share of skin that strokes cover, side by side or crossing. Dealt again until no wrong method gives the
 * right answer.
 */
export const coverageFromStrokes: Skill<Given> = {
  id: 'coverage-from-strokes',
  version: 1,
  words: coverageFromStrokesWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (
        load(given) <= 75 &&
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
    const { count, lengthMm, widthMm, areaMm2, crossing } = given;
    const sum = count * lengthMm * widthMm;
    return [
      { id: 'one', values: { lengthMm, widthMm, one: lengthMm * widthMm } },
      { id: 'all', values: { count, one: lengthMm * widthMm, sum, areaMm2, load: sum / areaMm2 } },
      crossing
        ? {
            id: 'crossing',
            values: { load: sum / areaMm2, bare: Math.exp(-sum / areaMm2), answer: right(given) },
          }
        : { id: 'apart', values: { load: sum / areaMm2, answer: right(given) } },
    ];
  },
  facts: ['lines-widen'],
};
