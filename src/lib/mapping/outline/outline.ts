import type { Brow } from '../marks/brow.ts';
import { edgesOf, type Edges } from './edges.ts';
import { edgesStayApart } from './edgesStayApart.ts';

/** The outline of one brow: two edges that nowhere cross, and a straight front. */
export type Outline = Edges & Readonly<{ ok: true; brow: Brow }>;

/** Why five marks make no outline. */
export const outlineFaults = [
  'mark-not-a-number',
  'tail-inside-front',
  'arch-not-between-front-and-tail',
  'front-top-not-above-lower',
  'upper-edge-under-lower-edge',
] as const;
export type NoOutline = Readonly<{ ok: false; reason: (typeof outlineFaults)[number] }>;

/** An arch at least this far from front and tail, mm: nearer, half an edge is a step and not a curve. */
const leastHalfMm = 1;
/** No mark of a brow lies farther from the face's middle, mm. */
const reachMm = 1000;

/** The outline through the five marks of a brow, or the first reason why they make none. */
export function outlineOf(brow: Brow): Outline | NoOutline {
  const { frontLower, frontTop, archTop, archLower, tail } = brow;
  const isInReach = (mm: number) => Math.abs(mm) <= reachMm;
  if (
    ![frontLower, frontTop, archTop, archLower, tail].every(
      ({ uMm, vMm }) => isInReach(uMm) && isInReach(vMm),
    )
  )
    return { ok: false, reason: 'mark-not-a-number' };
  if (!(tail.uMm > Math.max(frontLower.uMm, frontTop.uMm))) return { ok: false, reason: 'tail-inside-front' };
  const isBetween = (front: number, arch: number) =>
    arch - front >= leastHalfMm && tail.uMm - arch >= leastHalfMm;
  if (!isBetween(frontTop.uMm, archTop.uMm) || !isBetween(frontLower.uMm, archLower.uMm))
    return { ok: false, reason: 'arch-not-between-front-and-tail' };
  if (!(frontTop.vMm > frontLower.vMm)) return { ok: false, reason: 'front-top-not-above-lower' };
  const edges = edgesOf(brow);
  if (!edgesStayApart(edges)) return { ok: false, reason: 'upper-edge-under-lower-edge' };
  return { ok: true, brow, ...edges };
}
