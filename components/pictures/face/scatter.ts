import type { Draw } from '#lib/quantities/seed.ts';
import { blend, spotAfter, type Spot, type Spots } from '#lib/face/spot.ts';

/**
 * Spots spread evenly but irregularly over a polygon: the farthest of a few candidates each time (Mitchell
 * 1991).
 */
export function scatter(polygon: Spots, count: number, draw: Draw): Spots {
  const xs = polygon.map((spot) => spot[0]);
  const ys = polygon.map((spot) => spot[1]);
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - low];
  const kept: Spot[] = [];
  for (let i = 0; i < count; i++) {
    let best: Spot | undefined;
    let farthest = -1;
    for (let candidate = 0; candidate < 10; candidate++) {
      const spot: Spot = [left + width * draw(), low + height * draw()];
      if (!isInside(polygon, spot)) continue;
      const room = kept.reduce(
        (least, other) => Math.min(least, (other[0] - spot[0]) ** 2 + (other[1] - spot[1]) ** 2),
        1e9,
      );
      if (room > farthest) [farthest, best] = [room, spot];
    }
    if (best) kept.push(best);
  }
  return kept;
}

/** Even–odd rule. */
function isInside(polygon: Spots, [x, y]: Spot): boolean {
  return polygon.reduce((odd, a, i) => {
    const b = spotAfter(polygon, i);
    const crosses = a[1] > y !== b[1] > y && x < blend(a[0], b[0], (y - a[1]) / (b[1] - a[1]));
    return crosses ? !odd : odd;
  }, false);
}
