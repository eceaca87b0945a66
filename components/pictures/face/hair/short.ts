import type { Draw } from '#lib/quantities/seed.ts';
import { onCurve, reversed, spline } from '../curve.ts';
import { closedPath } from '../path.ts';
import { drawnCurve, type Layers } from '../shape.ts';
import { blend, type Spot } from '#lib/face/spot.ts';
import { mass, outerEdge, sideburnTip, strand, type HairHead } from './hairHead.ts';

/** Short hair parted on the client's left and swept across; it comes down to a point before each ear. */
export function short(head: HairHead, draw: Draw): Layers {
  const { cheek, hairlineV: h, temple } = head;
  const [tipU, tipV] = sideburnTip(head);
  const line = spline([
    [-tipU, tipV],
    [-temple + 4, 6],
    [-cheek + 9, 24],
    [-cheek + 11, 40],
    [-42, h - 11],
    [-14, h + 1],
    [23, h + 8],
    [cheek - 20, h - 7],
    [cheek - 10, 40],
    [cheek - 9, 24],
    [temple - 4, 6],
    [tipU, tipV],
  ]);
  const outer = outerEdge(head, 9);
  const sweep = (
    count: number,
    root: (t: number) => Spot,
    end: (t: number) => number,
    lift: number,
  ): Layers =>
    Array.from({ length: count }, (_, i) => {
      const t = i / (count - 1);
      const from = root(t);
      const to = onCurve(outer, end(t) + 0.02 * draw());
      return strand(
        [from, [blend(from[0], to[0], 0.45), blend(from[1], to[1], 0.35) + lift], to],
        0.35 + 0.4 * draw(),
      );
    });
  return [
    mass(closedPath(outer, reversed(line))),
    drawnCurve('hair', 'strand', outer, [0.3, 1.05, 0.3]),
    drawnCurve('hair', 'strand', line, [0.1, 0.3, 0.1]),
    ...sweep(
      22,
      (t) => [26 - 4 * t, h + 8 + 36 * t],
      (t) => 0.08 + 0.38 * t,
      9,
    ),
    ...sweep(
      10,
      (t) => [28 - 3 * t, h + 9 + 34 * t],
      (t) => 0.92 - 0.32 * t,
      4,
    ),
  ];
}
