import { anchorDistances } from '#lib/mapping/placing/anchorDistances.ts';
import { sharedTailLine, tailAgainstLine } from '#lib/mapping/placing/tailLine.ts';
import { mappingFacts } from '#lib/mapping/facts.ts';
import type { Check } from '../check.ts';

const at = (uMm: number, vMm: number) => ({ uMm, vMm });

/**
 * Shortest way from a point to the line over two points, as the tail's distance is found; `wing` is the lower
 * one.
 */
function awayMm(
  wing: readonly [number, number],
  corner: readonly [number, number],
  tail: readonly [number, number],
): number {
  const against = tailAgainstLine({ wing: at(...wing), corner: at(...corner) }, at(...tail));
  return against.ok ? Math.abs(against.insideMm) : 0;
}

type Column = 'first' | 'second';
/**
 * A nose and a gap as a table prints them, the nose leaning: how much further out the wing starts the fronts.
 */
function wingBeyondCornerMm(column: Column, factor: number): number {
  const wing = (factor * mappingFacts[`nose-width-${column}-mm`].value) / 2;
  const corner = mappingFacts[`corner-gap-${column}-mm`].value / 2;
  const side = (leanMm: number) => ({
    noseWing: at(wing + leanMm, -38),
    innerCorner: at(corner, -1),
    outerCorner: at(47, 2),
  });
  const marks = { right: side(-2), left: side(2) };
  const anchors = anchorDistances(marks, 0.6);
  return anchors['nose-wing'].bothMm === sharedTailLine(marks).wing.uMm
    ? anchors['nose-wing'].bothMm - anchors['inner-corner'].bothMm
    : 0;
}

const threeDecimals = 'printed to three decimals: half a unit of the last';

/** Front anchors and the tail line. */
export const placingChecks = [
  {
    id: 'point-to-line',
    kind: 'table',
    source: 'point-line-calculator',
    where: 'example problem 1',
    what: 'distance of (10, 3) from 5x + 6y + 12 = 0',
    printed: 10.243,
    unit: '1',
    tolerance: 0.0005,
    because: threeDecimals,
    ours: (factor = 1) => factor * awayMm([0, -2], [-6, 3], [10, 3]),
  },
  {
    id: 'point-to-line-second',
    kind: 'table',
    source: 'point-line-exercise',
    where: 'answers: the first',
    what: 'distance of (3, 1) from 2y = 5x + 1',
    printed: 2.6,
    unit: '1',
    tolerance: 0.0005,
    because: threeDecimals,
    ours: (factor = 1) => factor * awayMm([-1, -2], [1, 3], [3, 1]),
  },
  {
    id: 'point-to-line-third',
    kind: 'table',
    source: 'point-line-exercise',
    where: 'answers: the second',
    what: 'distance of (0, 1) from 2y = 5x + 1',
    printed: 0.186,
    unit: '1',
    tolerance: 0.0005,
    because: threeDecimals,
    ours: (factor = 1) => factor * awayMm([-1, -2], [1, 3], [0, 1]),
  },
  {
    id: 'point-to-line-fourth',
    kind: 'table',
    source: 'point-line-exercise',
    where: 'answers: the third',
    what: 'distance of (3, 0) from 2y = 5x + 1',
    printed: 2.971,
    unit: '1',
    tolerance: 0.0005,
    because: threeDecimals,
    ours: (factor = 1) => factor * awayMm([-1, -2], [1, 3], [3, 0]),
  },
  {
    id: 'wing-beyond-corner',
    kind: 'hand',
    source: 'face-table-2019',
    where: 'Table 9: first column, (43.2 − 32.2) / 2',
    what: 'how much further out the wing starts a front, nose leaning 2 mm',
    printed: 5.5,
    unit: 'mm',
    tolerance: 0.05,
    because: 'means printed to one decimal',
    ours: (factor = 1) => wingBeyondCornerMm('first', factor),
  },
  {
    id: 'wing-beyond-corner-second',
    kind: 'hand',
    source: 'face-table-2019',
    where: 'Table 9: second column, (40.7 − 32.1) / 2',
    what: 'the same for the second column',
    printed: 4.3,
    unit: 'mm',
    tolerance: 0.04,
    because: 'means printed to one decimal',
    ours: (factor = 1) => wingBeyondCornerMm('second', factor),
  },
] as const satisfies readonly Check[];
