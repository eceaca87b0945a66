import type { Brow } from '../marks/brow.ts';
import { edgeThrough, type Edge } from './edge.ts';

/** The two edges of one brow. They meet at the tail. */
export type Edges = Readonly<{ upper: Edge; lower: Edge }>;

/**
 * Upper edge front top – arch top – tail, lower edge front lower – arch lower – tail; whether they make an
 * outline is asked elsewhere.
 */
export function edgesOf({ frontLower, frontTop, archTop, archLower, tail }: Brow): Edges {
  return { upper: edgeThrough(frontTop, archTop, tail), lower: edgeThrough(frontLower, archLower, tail) };
}
