import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { acrossAt } from '#lib/mapping/outline/acrossAt.ts';
import { centreAt } from '#lib/mapping/outline/centreline.ts';
import { edgesOf } from '#lib/mapping/outline/edges.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { stationMm } from '#lib/mapping/outline/station.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import {
  thicknessAlongTheNormalWords,
  type BrowLine,
  type LineName,
  lineNames,
  type ThicknessGiven,
} from '#words/skills/thicknessAlongTheNormal.ts';
import type { Skill } from '../skill.ts';
import { areApart } from './areApart.ts';

type Given = ThicknessGiven;
const tolerance = 0.1;
/** Thinner than this, ends rounded to a tenth no longer show which line is square. */
const leastMm = 3;
const toTenth = (mm: number) => Math.round(mm * 10) / 10;
const at = (uMm: number, vMm: number): FacePoint => ({ uMm: toTenth(uMm), vMm: toTenth(vMm) });
const rounded = ({ lower, upper }: BrowLine): BrowLine => ({
  lower: at(lower.uMm, lower.vMm),
  upper: at(upper.uMm, upper.vMm),
});
const sidewaysMm = ({ lower, upper }: BrowLine) => Math.abs(upper.uMm - lower.uMm);
const upMm = ({ lower, upper }: BrowLine) => upper.vMm - lower.vMm;
const lengthMm = (line: BrowLine) => Math.hypot(sidewaysMm(line), upMm(line));

const square = ({ lines, square: name }: Given) => lines[name];
const slips: Skill<Given>['slips'] = [
  { id: 'straight-up', credit: 0.3, value: ({ lines, upright }) => lengthMm(lines[upright]) },
  { id: 'leaning-wrong', credit: 0.1, value: ({ lines, leaning }) => lengthMm(lines[leaning]) },
  { id: 'height-only', credit: 0.5, value: (given) => upMm(square(given)) },
  { id: 'sum-of-parts', credit: 0.4, value: (given) => sidewaysMm(square(given)) + upMm(square(given)) },
  {
    id: 'arch-marks',
    credit: 0,
    value: ({ brow }) => lengthMm({ lower: brow.archLower, upper: brow.archTop }),
  },
];

/** A brow with a steep front or a steep tail, and a station there; undefined where a line misses an edge. */
function deal(draw: Draw): Given | undefined {
  const about = (lo: number, hi: number) => lo + (hi - lo) * draw();
  const isFront = draw() < 0.4;
  const front = about(13, 18);
  const arch = front + about(22, 27);
  const lower = about(8, 12);
  const archLower = lower + about(7, isFront ? 11 : 9);
  const brow = {
    frontLower: at(front, lower),
    frontTop: at(front + about(0, 0.8), lower + about(6, 8.4)),
    archTop: at(arch, archLower + about(5.4, 7.4)),
    archLower: at(arch + about(-1, 1), archLower),
    tail: at(arch + about(12, 17), lower + about(0.5, 3)),
  };
  const stationPercent = isFront ? drawWhole(draw, 20, 32) : drawWhole(draw, 76, 88);
  const edges = edgesOf(brow);
  const centre = centreAt(edges, stationMm(brow, 'frontLower', stationPercent / 100));
  const [across, upright, leaning] = centre
    ? [centre.slope, 0, -centre.slope].map((slope) => acrossAt(edges, centre.point, slope))
    : [];
  const [first, ...others] = drawOne<readonly [LineName, LineName, LineName]>(draw, [
    ['A', 'B', 'C'],
    ['A', 'C', 'B'],
    ['B', 'A', 'C'],
    ['B', 'C', 'A'],
    ['C', 'A', 'B'],
    ['C', 'B', 'A'],
  ]);
  if (!centre || !across || !upright || !leaning || !outlineOf(brow).ok) return undefined;
  const [second, third] = others;
  const named = (name: LineName) => rounded(name === first ? across : name === second ? upright : leaning);
  const [a, b, c] = lineNames;
  return {
    side: draw() < 0.5 ? 'right' : 'left',
    brow,
    stationPercent,
    climbMm: toTenth(10 * centre.slope),
    lines: { A: named(a), B: named(b), C: named(c) },
    square: first,
    upright: second,
    leaning: third,
  };
}

/**
 * Thickness of a sloping brow along the line that stands square to its centreline: found among three, then
 * measured.
 */
export const thicknessAlongTheNormal: Skill<Given> = {
  id: 'thickness-along-the-normal',
  version: 1,
  words: thicknessAlongTheNormalWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (
        !given ||
        Math.abs(given.climbMm) < 3.5 ||
        Math.abs(given.climbMm) > 6.5 ||
        lengthMm(square(given)) < leastMm
      )
        continue;
      if (
        areApart(
          lengthMm(square(given)),
          slips.map(({ value }) => Number(value(given))),
          tolerance,
        )
      )
        return given;
    }
  },
  answer: (given) => ({
    kind: 'number',
    range: rangeAround(lengthMm(square(given)), tolerance, 1),
    exact: lengthMm(square(given)),
    unit: 'mm',
  }),
  slips,
  steps: (given) => {
    const line = square(given);
    const isClimbing = given.climbMm > 0;
    return [
      {
        id: 'find',
        values: {
          way: isClimbing ? 'climbs' : 'falls',
          lean: isClimbing ? 'towards the midline' : 'outward',
          name: given.square,
        },
      },
      { id: 'parts', values: { name: given.square, acrossMm: sidewaysMm(line), upMm: upMm(line) } },
      { id: 'length', values: { acrossMm: sidewaysMm(line), upMm: upMm(line), thicknessMm: lengthMm(line) } },
    ];
  },
  facts: ['thickness-equal', 'straight-up-too-thick-20-deg', 'straight-up-too-thick-30-deg'],
};
