import type { Brow } from '../marks/brow.ts';
import { browMarks } from '../marks/markSet.ts';
import { heightRow, type EdgeSpans } from './edgeSpans.ts';
import { heightsOf, listOf } from './heights.ts';
import { rowValue, type Row } from './row.ts';

/** The upper edge stays over the lower one by so much, mm, or by half of what it does now where that is less. */
const leastGapMm = 5e-4;
/** The same of how steeply both edges part at the tail. */
const leastParting = 1e-3;
/** Places between each two neighbouring marks. */
const places = 8;

/**
 * Rows that keep a plan an outline: the upper front mark over the lower one, the upper edge over the lower one
 * at each mark, at places between, and at any further places asked for, and the edges parting from the tail.
 * Between two places they can still touch: the plan is looked at again, and its narrowest place joins.
 */
export function apartRows(brow: Brow, spans: EdgeSpans, furtherMm: readonly number[]): readonly Row[] {
  const { archTop, archLower, tail } = brow;
  const [over, under] = [1 / (tail.uMm - archTop.uMm), 1 / (tail.uMm - archLower.uMm)];
  const front = rowOf({ frontTop: 1, frontLower: -1 });
  const parting = rowOf({ archTop: over, archLower: -under, tail: under - over });
  const knots = [...new Set(Object.values(brow).map(({ uMm }) => uMm))].sort((a, b) => a - b);
  const between = knots.flatMap((fromMm, i) => {
    const toMm = knots[i + 1] ?? fromMm;
    return Array.from({ length: places }, (_, k) => fromMm + ((toMm - fromMm) * k) / places);
  });
  const now = listOf(heightsOf(brow));
  const row = (coefficients: readonly number[], least: number): readonly Row[] => {
    const value = rowValue(coefficients, now);
    return value > 0 ? [{ coefficients, atLeast: Math.min(least, value / 2) }] : [];
  };
  return [
    ...row(front, leastGapMm),
    ...row(parting, leastParting),
    ...[...between, ...furtherMm].flatMap((uMm) => row(gapRow(spans, uMm) ?? [], leastGapMm)),
  ];
}

/** Where the upper edge stands least over the lower one at some heights. */
export function narrowestMm(brow: Brow, spans: EdgeSpans, heights: readonly number[]): number {
  const { frontLower, frontTop, tail } = brow;
  const fromMm = Math.min(frontLower.uMm, frontTop.uMm);
  const count = 400;
  let [narrowest, leastMm] = [fromMm, Infinity];
  for (let i = 1; i < count; i++) {
    const uMm = fromMm + ((tail.uMm - fromMm) * i) / count;
    const gapMm = rowValue(gapRow(spans, uMm) ?? [Infinity], heights);
    if (gapMm < leastMm) [narrowest, leastMm] = [uMm, gapMm];
  }
  return narrowest;
}

function gapRow({ upper, lower }: EdgeSpans, uMm: number): readonly number[] | undefined {
  const [over, under] = [heightRow(upper, uMm), heightRow(lower, uMm)];
  return over && under && over.map((share, i) => share - (under[i] ?? 0));
}

const rowOf = (shares: Partial<Record<(typeof browMarks)[number], number>>): readonly number[] =>
  browMarks.map((mark) => shares[mark] ?? 0);
