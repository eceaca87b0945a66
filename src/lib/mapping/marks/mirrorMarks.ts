import { facePairs, faceSingles, type FacePair, type FaceSingle, type MarkSet } from './markSet.ts';
import type { MirrorMarks } from '../midline/midline.ts';

/**
 * The marks the midline is fitted to, in the order used everywhere: pairs first, then single marks. Never a
 * brow.
 */
export const midlineMarks = [...facePairs, ...faceSingles] as const;
export type MidlineMark = FacePair | FaceSingle;

/** A face's marks as mirror pairs, in the order of `midlineMarks`; a single mark is its own partner. */
export function mirrorMarksOf({ pairs, singles }: MarkSet): readonly MirrorMarks[] {
  return [
    ...facePairs.map((name) => pairs[name]),
    ...faceSingles.map((name) => ({ right: singles[name], left: singles[name] })),
  ];
}

/**
 * No mark of a face lies farther than this from the picture's origin, mm: far above any picture, far below
 * overflow.
 */
export const reachMm = 10_000;

/** True when every coordinate of the set is a number within reach. */
export function everyMarkIsInReach({ pairs, singles, brows }: MarkSet): boolean {
  const points = [
    ...[...Object.values(pairs), ...Object.values(brows)].flatMap(({ right, left }) => [right, left]),
    ...Object.values(singles),
  ];
  return points.every(({ xMm, yMm }) => Math.abs(xMm) <= reachMm && Math.abs(yMm) <= reachMm);
}
