import type { Outline } from '../outline/outline.ts';
import { areaBeyondMm2 } from './areaBeyond.ts';
import { edgeSpans } from './edgeSpans.ts';
import { heightsOf, listOf } from './heights.ts';
import { oldPieces } from './oldPieces.ts';
import { edgesOf, type OldShape } from './oldShape.ts';

/**
 * The area of an old shape outside an outline, mm², in closed form: what lies before the front and beyond the
 * tail, and between them what lies over the upper edge or under the lower one.
 */
export function outsideAreaMm2(old: OldShape, { brow }: Outline): number {
  const { frontLower, frontTop, tail } = brow;
  const heights = listOf(heightsOf(brow));
  const { added, taken } = oldPieces(old, edgeSpans(brow), tail.uMm, 0);
  const between = stripMm2(old, Math.min(frontLower.uMm, frontTop.uMm), tail.uMm);
  return old.areaMm2 - between + areaBeyondMm2(added, heights) - areaBeyondMm2(taken, heights);
}

/** The area of an old shape between two places: ∫ of the edges that run inward less those that run outward. */
function stripMm2({ corners }: OldShape, fromMm: number, toMm: number): number {
  const held = (uMm: number) => Math.min(toMm, Math.max(fromMm, uMm));
  return edgesOf(corners).reduce((sum, [a, b]) => {
    const [first, last] = [held(a.uMm), held(b.uMm)];
    if (first === last) return sum;
    const on = (uMm: number) => a.vMm + ((b.vMm - a.vMm) * (uMm - a.uMm)) / (b.uMm - a.uMm);
    return sum + ((first - last) * (on(first) + on(last))) / 2;
  }, 0);
}
