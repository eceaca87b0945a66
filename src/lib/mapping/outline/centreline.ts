import type { FacePoint } from '../marks/faceFrame.ts';
import { edgeAt } from './edge.ts';
import type { Edges } from './edges.ts';

/**
 * A place on the centreline, the centreline's slope there, mm up for each mm outward, and from edge to edge
 * straight up, mm.
 */
export type CentrePoint = Readonly<{ point: FacePoint; slope: number; straightUpMm: number }>;

/**
 * The line half way between the two edges, straight up and down; undefined where one of the edges has not
 * begun or has ended.
 */
export function centreAt({ upper, lower }: Edges, uMm: number): CentrePoint | undefined {
  const [over, under] = [edgeAt(upper, uMm), edgeAt(lower, uMm)];
  if (!over || !under) return undefined;
  return {
    point: { uMm, vMm: (over.heightMm + under.heightMm) / 2 },
    slope: (over.slope + under.slope) / 2,
    straightUpMm: over.heightMm - under.heightMm,
  };
}
