import type { Draw } from '#lib/quantities/seed.ts';
import { closedSpline, reversed } from '../curve.ts';
import { closedPath } from '../path.ts';
import { penLine } from '../penLine.ts';
import { drawnCurve, filled, type Layers } from '../shape.ts';
import { blend, type Spot, type Spots } from '#lib/face/spot.ts';
import { betweenEdges, fineStrands, hairline, mass, outerEdge, strand, type HairHead } from './hairHead.ts';

/** The bun behind the crown: a twisted rope of hair, so its lines wind instead of standing up. */
export function bun(draw: Draw): Layers {
  const edge = closedSpline([
    [-18, 108],
    [-23, 119],
    [-17, 131],
    [-2, 136],
    [13, 134],
    [22, 124],
    [20, 111],
    [0, 105],
  ]);
  const winds = [0, 1, 2, 3, 4].map((i): Spots => {
    const size = 1 - i * 0.17;
    const turn = 0.5 + i * 1.25;
    return Array.from({ length: 6 }, (_, k): Spot => {
      const angle = turn + k * 0.42;
      const r = size * (1 - k * 0.045) * (0.98 + 0.03 * draw());
      return [0.5 + 19 * r * Math.cos(angle), 121 + 13 * r * Math.sin(angle)];
    });
  });
  return [
    mass(closedPath(edge)),
    filled('hair', 'strand', penLine(edge, [0.7, 1, 0.7])),
    ...winds.map((spots, i) => strand(spots, 0.75 - i * 0.06)),
  ];
}

/** Hair drawn back from the whole hairline to the crown. */
export function tied(head: HairHead, draw: Draw): Layers {
  const line = hairline(head);
  const outer = outerEdge(head, 3);
  const at = (t: number, depth: number): Spot => betweenEdges(line, outer, t, depth);
  const long = Array.from({ length: 40 }, (_, i): Layers[number] => {
    const t = 0.06 + (0.88 * (i + 0.6 * draw())) / 40;
    const start = draw() * 0.5;
    const spots: Spots = [
      at(blend(t, 0.5, start * 0.5), start),
      at(blend(t, 0.5, 0.18 + start * 0.3), 0.45 + start * 0.3),
      at(blend(t, 0.5, 0.5), 0.93),
    ];
    return strand(spots, 0.25 + 0.35 * draw());
  });
  const roots = Array.from({ length: 96 }, (_, i): Spots => {
    const t = 0.05 + (0.9 * (i + draw())) / 96;
    return [at(t, -0.012), at(blend(t, 0.5, 0.05), 0.1), at(blend(t, 0.5, 0.1), 0.16 + 0.22 * draw())];
  });
  return [
    mass(closedPath(outer, reversed(line))),
    drawnCurve('hair', 'strand', outer, [0.3, 1.05, 0.3]),
    ...long,
    fineStrands(roots, 0.26),
  ];
}
