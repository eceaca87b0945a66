import { facePairs, faceSingles, type FacePair, type FaceSingle, type MarkSet } from './markSet.ts';
import type { MirrorMarks } from './midline.ts';

/** The marks the midline is fitted to, in the order used everywhere: pairs first, then single marks. Never a brow. */
export const midlineMarks = [...facePairs, ...faceSingles] as const;
export type MidlineMark = FacePair | FaceSingle;

/** A face's marks as mirror pairs, in the order of `midlineMarks`; a single mark is its own partner. */
export function mirrorMarksOf({ pairs, singles }: MarkSet): readonly MirrorMarks[] {
  return [...facePairs.map((name) => pairs[name]), ...faceSingles.map((name) => ({ right: singles[name], left: singles[name] }))];
}

/** True when no coordinate of the set is missing or infinite. */
export function everyMarkIsFinite({ pairs, singles, brows }: MarkSet): boolean {
  const points = [...[...Object.values(pairs), ...Object.values(brows)].flatMap(({ right, left }) => [right, left]), ...Object.values(singles)];
  return points.every(({ xMm, yMm }) => Number.isFinite(xMm) && Number.isFinite(yMm));
}
