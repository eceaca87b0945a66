import type { Brow } from '../marks/brow.ts';
import { forBrowMarks, type BrowRecord } from '../marks/browRecord.ts';
import { browMarks } from '../marks/markSet.ts';

/** The heights of the five marks of one brow, mm above the pupils. */
export type BrowHeights = BrowRecord<number>;

/** The heights of a brow's marks. */
export function heightsOf(brow: Brow): BrowHeights {
  return forBrowMarks((mark) => brow[mark].vMm);
}

/** The brow with the same places across and other heights. */
export function withHeights(brow: Brow, heights: BrowHeights): Brow {
  return forBrowMarks((mark) => ({ uMm: brow[mark].uMm, vMm: heights[mark] }));
}

/** Heights as a list in the order of `browMarks`: the unknowns of a plan. */
export function listOf(heights: BrowHeights): readonly number[] {
  return browMarks.map((mark) => heights[mark]);
}

/** The way back from a list in the order of `browMarks`. */
export function heightsFrom(list: readonly number[]): BrowHeights {
  return forBrowMarks((mark) => list[browMarks.indexOf(mark)] ?? 0);
}
