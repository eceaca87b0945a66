import type { FacePoint } from '../marks/faceFrame.ts';

/**
 * Half of one edge of a brow: from its end, which is the front or the tail, to the arch. The two are never
 * one above the other.
 */
export type HalfEdge = Readonly<{ end: FacePoint; arch: FacePoint }>;

/** A cubic Bézier curve by its four points. */
export type Cubic = readonly [FacePoint, FacePoint, FacePoint, FacePoint];

/**
 * How much of the height at u comes from the end's height; the arch gives the rest: B(t) = 1 − 1.5t + 0.5t³
 * with t from 0 at the end to 1 at the arch. It falls all the way and is level at the arch, so the edge never
 * passes either mark.
 */
export function endShare({ end, arch }: HalfEdge, uMm: number): number {
  const t = (uMm - end.uMm) / (arch.uMm - end.uMm);
  return 1 - 1.5 * t + 0.5 * t ** 3;
}

/** Height at u, mm: v_arch + (v_end − v_arch)·B. Linear in the two heights. */
export function halfEdgeHeightMm(half: HalfEdge, uMm: number): number {
  return half.arch.vMm + (half.end.vMm - half.arch.vMm) * endShare(half, uMm);
}

/** The slope at the end, m = 1.5 Δv/h: mm up for each mm outward. */
export function endSlope({ end, arch }: HalfEdge): number {
  return (1.5 * (arch.vMm - end.vMm)) / (arch.uMm - end.uMm);
}

/** The slope at u, m(1 − t²): mm up for each mm outward. */
export function halfEdgeSlope(half: HalfEdge, uMm: number): number {
  const t = (uMm - half.end.uMm) / (half.arch.uMm - half.end.uMm);
  return endSlope(half) * (1 - t * t);
}

/**
 * Area between half an edge and the level v = 0, mm²: |h|(v_arch + 0.375(v_end − v_arch)), since B has the
 * mean 3/8.
 */
export function halfEdgeAreaMm2({ end, arch }: HalfEdge): number {
  return Math.abs(arch.uMm - end.uMm) * (arch.vMm + 0.375 * (end.vMm - arch.vMm));
}

/**
 * The very same curve as a cubic Bézier, from the end to the arch: end, end + (h/3, m h/3), arch − (h/3, 0),
 * arch.
 */
export function halfEdgeCurve(half: HalfEdge): Cubic {
  const { end, arch } = half;
  const thirdMm = (arch.uMm - end.uMm) / 3;
  return [
    end,
    { uMm: end.uMm + thirdMm, vMm: end.vMm + endSlope(half) * thirdMm },
    { uMm: arch.uMm - thirdMm, vMm: arch.vMm },
    arch,
  ];
}
