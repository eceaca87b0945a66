import type { Draw } from '#lib/quantities/seed.ts';
import type { Path, Step } from './path.ts';
import { blend, spotAfter, type Spot, type Spots } from '#lib/face/spot.ts';

/** Direction, distance between lines, and how far the ends are feathered. */
export type HatchStyle = Readonly<{ angleRad: number; gapMm: number; softMm: number }>;

/** Parallel lines across a polygon: hatching that prints, and that looks blurred without a filter. */
export function hatchPath(polygon: Spots, { angleRad, gapMm, softMm }: HatchStyle, draw: Draw): Path {
  const cos = Math.cos(angleRad);
  const sin = Math.sin(angleRad);
  const back = (x: number, y: number): Spot => [x * cos - y * sin, x * sin + y * cos];
  const turned = polygon.map(([x, y]): Spot => [x * cos + y * sin, y * cos - x * sin]);
  const heights = turned.map((spot) => spot[1]);
  const top = Math.max(...heights);
  const steps: Step[] = [];
  for (let y = Math.min(...heights) + gapMm * 0.4; y < top; y += gapMm * (0.85 + 0.3 * draw())) {
    const crossings = crossingsAt(turned, y);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = (crossings[i] ?? 0) - softMm * (draw() - 0.35);
      const to = (crossings[i + 1] ?? 0) + softMm * (draw() - 0.35);
      if (to - from > 0.4) steps.push(['M', back(from, y)], ['L', back(to, y)]);
    }
  }
  return steps;
}

function crossingsAt(polygon: Spots, y: number): readonly number[] {
  return polygon
    .flatMap((a, i) => {
      const b = spotAfter(polygon, i);
      return a[1] > y === b[1] > y ? [] : [blend(a[0], b[0], (y - a[1]) / (b[1] - a[1]))];
    })
    .sort((a, b) => a - b);
}
