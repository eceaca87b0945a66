import type { Brow } from '../marks/brow.ts';
import { browMarks } from '../marks/markSet.ts';
import { heightRow, type EdgeSpans } from './edgeSpans.ts';
import { heightsOf, listOf } from './heights.ts';
import { rowValue, type Row } from './row.ts';

/** The upper edge stays over the lower one by so much, mm, or by half of what it does now where that is less. */
const leastGapMm = 1e-3;
const places = 48;

/**
 * Rows that keep a plan an outline: the upper front mark over the lower one, and the upper edge over the lower
 * one at places from front to tail. Between two of them the edges can still touch: the plan is looked at again.
 */
export function apartRows(brow: Brow, { upper, lower }: EdgeSpans): readonly Row[] {
  const { frontLower, frontTop, tail } = brow;
  const heights = listOf(heightsOf(brow));
  const fromMm = Math.min(frontLower.uMm, frontTop.uMm);
  const gaps = Array.from({ length: places }, (_, i) => {
    const uMm = fromMm + ((tail.uMm - fromMm) * i) / places;
    const [over, under] = [heightRow(upper, uMm), heightRow(lower, uMm)];
    return over && under ? over.map((share, at) => share - (under[at] ?? 0)) : [];
  });
  const front = browMarks.map((mark) => (mark === 'frontTop' ? 1 : mark === 'frontLower' ? -1 : 0));
  return [front, ...gaps].flatMap((coefficients) => {
    const nowMm = rowValue(coefficients, heights);
    return nowMm > 0 ? [{ coefficients, atLeast: Math.min(leastGapMm, nowMm / 2) }] : [];
  });
}
