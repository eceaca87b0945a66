import { edgeHeightMm } from './edge.ts';
import type { Edges } from './edges.ts';

/** From the lower to the upper border of an outline at one place, straight up, mm. */
export type Span = Readonly<{ lowerMm: number; upperMm: number }>;

/**
 * The outline's span at u; undefined beyond its ends. Where the front leans, the straight line between the
 * two front marks stands in for the edge that has not begun yet.
 */
export function spanAt({ upper, lower }: Edges, uMm: number): Span | undefined {
  const upperMm = edgeHeightMm(upper, uMm) ?? frontHeightMm({ upper, lower }, uMm);
  const lowerMm = edgeHeightMm(lower, uMm) ?? frontHeightMm({ upper, lower }, uMm);
  return upperMm === undefined || lowerMm === undefined ? undefined : { lowerMm, upperMm };
}

/**
 * Height of the straight front at u; undefined where it does not reach, and for a front that stands upright.
 */
function frontHeightMm({ upper, lower }: Edges, uMm: number): number | undefined {
  const top = upper.front.end;
  const foot = lower.front.end;
  const share = (uMm - foot.uMm) / (top.uMm - foot.uMm);
  return share >= 0 && share <= 1 ? foot.vMm + (top.vMm - foot.vMm) * share : undefined;
}
