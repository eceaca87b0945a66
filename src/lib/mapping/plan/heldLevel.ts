import { areaBeyond, areaBeyondMm2 } from './areaBeyond.ts';
import type { OldPiece } from './oldPieces.ts';
import { rowValue, type Row } from './row.ts';

/** What an area is made of: its pieces' areas added up, and others taken off. */
export type Parts = Readonly<{ added: readonly OldPiece[]; taken: readonly OldPiece[] }>;

/**
 * An area that later stages may not make larger, but for a tolerance. It is held by rows, each the level's
 * tangent at some heights: a row leaves out no heights whose area is at most `aimMm2`.
 */
export type HeldLevel = Readonly<{
  /** Never below the true area, mm². */
  areaMm2: (heights: readonly number[]) => number;
  mostMm2: number;
  aimMm2: number;
  cutAt: (heights: readonly number[]) => Row;
}>;

/** Rows aim at this share of the tolerance, so that a few are enough to come below all of it. */
const aimShare = 0.9;

/**
 * The level of an area reached at some heights. What is taken off is put as its tangent there: it never lies
 * above what it stands for, so the level is convex and lies inside the true one (convex–concave procedure,
 * Yuille & Rangarajan 2003).
 */
export function heldLevel(
  { added, taken }: Parts,
  reached: readonly number[],
  reachedMm2: number,
  toleranceMm2: number,
): HeldLevel {
  const off = areaBeyond(taken, reached);
  const offMm2 = (heights: readonly number[]) =>
    off.areaMm2 + rowValue(off.slope, heights) - rowValue(off.slope, reached);
  const aimMm2 = reachedMm2 + aimShare * toleranceMm2;
  return {
    areaMm2: (heights) => areaBeyondMm2(added, heights) - offMm2(heights),
    mostMm2: reachedMm2 + toleranceMm2,
    aimMm2,
    cutAt: (heights) => {
      const { areaMm2, slope } = areaBeyond(added, heights);
      const coefficients = slope.map((by, i) => (off.slope[i] ?? 0) - by);
      return { coefficients, atLeast: areaMm2 - offMm2(heights) - aimMm2 + rowValue(coefficients, heights) };
    },
  };
}
