import type { FacePoint } from '../faceFrame.ts';
import { edgeHeightMm, edgeSlope } from './edge.ts';
import type { Edges } from './edges.ts';

/** A place on the centreline, and the centreline's slope there, mm up for each mm outward. */
export type CentrePoint = Readonly<{ point: FacePoint; slope: number }>;

/** The line half way between the two edges, straight up and down; undefined where one of the edges has not begun or has ended. */
export function centreAt({ upper, lower }: Edges, uMm: number): CentrePoint | undefined {
  const [top, foot] = [edgeHeightMm(upper, uMm), edgeHeightMm(lower, uMm)];
  const [over, under] = [edgeSlope(upper, uMm), edgeSlope(lower, uMm)];
  if (top === undefined || foot === undefined || over === undefined || under === undefined) return undefined;
  return { point: { uMm, vMm: (top + foot) / 2 }, slope: (over + under) / 2 };
}
