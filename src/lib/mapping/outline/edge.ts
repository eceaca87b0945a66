import type { FacePoint } from '../marks/faceFrame.ts';
import { endShare, halfEdgeAreaMm2, halfEdgeHeightMm, halfEdgeSlope, type HalfEdge } from './halfEdge.ts';

/** One edge of a brow, upper or lower: two halves that meet, level, at the arch. */
export type Edge = Readonly<{ front: HalfEdge; tail: HalfEdge }>;

/** What each mark's height gives to the edge's height at one place; the three add up to 1. */
export type EdgeShares = Readonly<{ front: number; arch: number; tail: number }>;

/** The edge through three marks. */
export function edgeThrough(front: FacePoint, arch: FacePoint, tail: FacePoint): Edge {
  return { front: { end: front, arch }, tail: { end: tail, arch } };
}

/** The half that stands over u; undefined beyond the edge's ends. */
function halfAt({ front, tail }: Edge, uMm: number): HalfEdge | undefined {
  if (!(uMm >= front.end.uMm && uMm <= tail.end.uMm)) return undefined;
  return uMm <= front.arch.uMm ? front : tail;
}

/** Height of the edge at u, mm; undefined beyond its ends. */
export function edgeHeightMm(edge: Edge, uMm: number): number | undefined {
  const half = halfAt(edge, uMm);
  return half && halfEdgeHeightMm(half, uMm);
}

/** Height of the edge at u, mm, and its slope there, mm up for each mm outward; undefined beyond its ends. */
export function edgeAt(edge: Edge, uMm: number): Readonly<{ heightMm: number; slope: number }> | undefined {
  const half = halfAt(edge, uMm);
  return half && { heightMm: halfEdgeHeightMm(half, uMm), slope: halfEdgeSlope(half, uMm) };
}

/** How the edge's height at u is made of the heights of its three marks; undefined beyond its ends. */
export function edgeShares(edge: Edge, uMm: number): EdgeShares | undefined {
  const half = halfAt(edge, uMm);
  if (!half) return undefined;
  const end = endShare(half, uMm);
  return half === edge.front
    ? { front: end, arch: 1 - end, tail: 0 }
    : { front: 0, arch: 1 - end, tail: end };
}

/** Area between the edge and the level v = 0, mm², from its front to its tail. */
export function edgeAreaMm2({ front, tail }: Edge): number {
  return halfEdgeAreaMm2(front) + halfEdgeAreaMm2(tail);
}
