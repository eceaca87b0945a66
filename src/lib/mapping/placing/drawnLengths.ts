import type { FacePoint } from '../marks/faceFrame.ts';
import type { SideMarks } from './placingMarks.ts';

/** Where the front is measured: at its lower or at its upper mark. */
export const frontEdges = ['frontLower', 'frontTop'] as const;
export type FrontEdge = (typeof frontEdges)[number];

/**
 * Three lengths of one brow, mm, that are not the same number. `level`: from front to tail straight across,
 * as seen from the front (what shares such as the arch's place count on). `chord`: the straight line from
 * front mark to tail tip.
 * `upperEdge`: along the drawn upper edge, from the upper front mark over the arch to the tip.
 */
export const lengthKinds = ['level', 'chord', 'upperEdge'] as const;
export type LengthKind = (typeof lengthKinds)[number];
export type DrawnLengths = Readonly<Record<LengthKind, number>>;

type LengthMarks = Pick<SideMarks, 'frontLower' | 'frontTop' | 'archTop' | 'tail'>;

/** The lengths of one brow, its front measured at `edge`. */
export function drawnLengths(brow: LengthMarks, edge: FrontEdge): DrawnLengths {
  const { archTop, frontTop, tail } = brow;
  const front = brow[edge];
  return {
    level: tail.uMm - front.uMm,
    chord: Math.hypot(tail.uMm - front.uMm, tail.vMm - front.vMm),
    upperEdge: halfEdgeMm(frontTop, archTop) + halfEdgeMm(tail, archTop),
  };
}

const pieces = 32;

/**
 * Length of half an upper edge, from its end to the arch: v = v_arch + (v_end − v_arch)(1 − 1.5t + 0.5t³)
 * with t from 0 at the end to 1 at the arch, level there. Simpson's rule on √(h² + (1.5 Δv (1 − t²))²); error
 * below 1e-5 mm on any brow.
 * The rise is written out and not taken from the half edge's slope: an upright half has a length, too, but no
 * slope.
 */
export function halfEdgeMm(end: FacePoint, arch: FacePoint): number {
  const acrossMm = arch.uMm - end.uMm;
  const riseMm = 1.5 * (end.vMm - arch.vMm);
  let sum = 0;
  for (let i = 0; i <= pieces; i++) {
    const t = i / pieces;
    const weight = i === 0 || i === pieces ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.hypot(acrossMm, riseMm * (1 - t * t));
  }
  return sum / (3 * pieces);
}
