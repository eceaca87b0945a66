import { type HalfEdge, halfEdgeCurve, halfEdgeHeightMm } from '#lib/mapping/outline/halfEdge.ts';
import type { BrowSpots } from '#lib/face/landmarks.ts';
import { reversed, type Curve, type Piece } from '../curve.ts';
import { closedPath, type Path } from '../path.ts';
import { blend, type Spot } from '#lib/face/spot.ts';

const half = (end: Spot, arch: Spot): HalfEdge => ({
  end: { uMm: end[0], vMm: end[1] },
  arch: { uMm: arch[0], vMm: arch[1] },
});

/** Half an edge, from an end to the arch. */
function halfEdge(end: Spot, arch: Spot): Piece {
  const [, one, other] = halfEdgeCurve(half(end, arch));
  return [end, [one.uMm, one.vMm], [other.uMm, other.vMm], arch];
}

function edgesOf(brow: BrowSpots): Curve {
  const upper = [halfEdge(brow.frontTop, brow.archTop), ...reversed([halfEdge(brow.tail, brow.archTop)])];
  const lower = [
    halfEdge(brow.tail, brow.archLower),
    ...reversed([halfEdge(brow.frontLower, brow.archLower)]),
  ];
  return [...upper, ...lower];
}

/** The outline through all five marks: a lining of the brow's area, straight at the front. */
export function browOutline(brow: BrowSpots): Path {
  return closedPath(edgesOf(brow));
}

function edgeV(end: Spot, arch: Spot, tail: Spot, u: number): number {
  return u <= arch[0]
    ? halfEdgeHeightMm(half(end, arch), Math.max(u, end[0]))
    : halfEdgeHeightMm(half(tail, arch), Math.min(u, tail[0]));
}

/** Height of the upper edge at u. */
export function upperV(brow: BrowSpots, u: number): number {
  return edgeV(brow.frontTop, brow.archTop, brow.tail, u);
}

/** Height of the lower edge at u. */
export function lowerV(brow: BrowSpots, u: number): number {
  return edgeV(brow.frontLower, brow.archLower, brow.tail, u);
}

/**
 * A place in the brow: t from 0 at the front to 1 at the tail, s from 0 at the lower edge to 1 at the upper.
 */
export function placeIn(brow: BrowSpots, t: number, s: number): Spot {
  const front = blend(brow.frontLower[0], brow.frontTop[0], s);
  const u = front + t * (brow.tail[0] - front);
  return [u, blend(lowerV(brow, u), upperV(brow, u), s)];
}

/** The brow's own run at that place, radians above the outward direction. */
export function runAt(brow: BrowSpots, t: number, s: number): number {
  const before = placeIn(brow, Math.max(0, t - 0.02), s);
  const after = placeIn(brow, Math.min(1, t + 0.02), s);
  return Math.atan2(after[1] - before[1], after[0] - before[0]);
}

export function browLengthMm(brow: BrowSpots): number {
  return brow.tail[0] - brow.frontLower[0];
}
