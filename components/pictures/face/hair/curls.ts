import type { Draw } from '#lib/quantities/seed.ts';
import { onCurve, polygonOf, reversed, spline, type Curve } from '../curve.ts';
import { closedPath, openPath } from '../path.ts';
import { scatter } from '../scatter.ts';
import { stroked, type Layers } from '../shape.ts';
import { distance, mirrored, type Spot, type Spots } from '#lib/face/spot.ts';
import { fineStrands, hairline, mass, type HairHead } from './hairHead.ts';

/** Full curls stand off the head all round and cover the ears. */
function fullEdge({ skull }: HairHead): Spots {
  return [
    [-skull + 6, -46],
    [-skull - 8, -36],
    [-skull - 19, -8],
    [-skull - 22, 30],
    [-skull - 12, 76],
    [-46, 116],
    [0, 131],
    [48, 117],
    [skull + 13, 75],
    [skull + 22, 28],
    [skull + 18, -10],
    [skull + 9, -36],
    [skull - 6, -47],
  ];
}

export function curlsBack(head: HairHead, draw: Draw): Layers {
  const edge = lobed(spline(fullEdge(head)), 40, 3.4, draw);
  return [mass(closedPath(edge)), stroked('hair', 'strand', openPath(edge), 0.8)];
}

export function curlsFront(head: HairHead, draw: Draw): Layers {
  const line = hairline(head);
  const soft = lobed(line, 24, -2.4, draw);
  const outer = spline(fullEdge(head).slice(1, -1));
  const inside = spline(
    fullEdge(head)
      .slice(1, -1)
      .map(([x, v]): Spot => [x * 0.93, v > 0 ? v * 0.95 : v]),
  );
  const region = polygonOf(outer, reversed(line));
  const curls = scatter(region, 210, draw).map(([x, v]): Spots => {
    const size = 1.5 + 2.1 * draw();
    const start = 2 * Math.PI * draw();
    const turns = 2.6 + 1.8 * draw();
    return [0, 0.33, 0.67, 1].map((t): Spot => {
      const r = size * (1 - 0.35 * t);
      return [x + r * Math.cos(start + t * turns), v + r * Math.sin(start + t * turns)];
    });
  });
  return [
    mass(closedPath(inside, reversed(soft))),
    ...sideCover(head),
    stroked('hair', 'strand', openPath(soft), 0.55),
    fineStrands(curls, 0.42),
  ];
}

/** Curls in front of the ears, down to the jaw. */
function sideCover({ cheek, skull }: HairHead): Layers {
  const side: Spots = [
    [cheek - 8, 20],
    [cheek - 3.5, 4],
    [cheek - 1, -14],
    [cheek - 0.4, -28],
    [cheek + 1.5, -40],
    [skull + 4, -45],
    [skull + 13, -30],
    [skull + 16, 0],
  ];
  return [mass(closedPath(spline(side))), mass(closedPath(spline(mirrored(side))))];
}

/** A contour of round, uneven lobes that meet in small notches. */
function lobed(curve: Curve, lobes: number, deepMm: number, draw: Draw): Curve {
  const breaks = Array.from({ length: lobes + 1 }, (_, i) =>
    i === 0 || i === lobes ? i / lobes : (i + 0.7 * (draw() - 0.5)) / lobes,
  );
  const spots = breaks.flatMap((t, i): Spots => {
    const next = breaks[i + 1];
    if (next === undefined) return [onCurve(curve, t)];
    const out = deepMm * (0.55 + 0.75 * draw());
    const lobe = (k: number): Spot => pushed(curve, t + (next - t) * k, out);
    return [pushed(curve, t, 0), lobe(0.22), lobe(0.5), lobe(0.78)];
  });
  return spline(spots);
}

/** A spot of the curve moved to its left. */
function pushed(curve: Curve, t: number, byMm: number): Spot {
  const [x, v] = onCurve(curve, t);
  const after = onCurve(curve, Math.min(1, t + 0.01));
  const before = onCurve(curve, Math.max(0, t - 0.01));
  const length = distance(before, after) || 1;
  return [x - ((after[1] - before[1]) / length) * byMm, v + ((after[0] - before[0]) / length) * byMm];
}
