import { reversed, spline, type Curve, type Piece } from './curve.ts';
import { closedPath, type Path } from './path.ts';
import { blend, distance, type Spot, type Spots } from '#lib/face/spot.ts';

/** Line widths at the start, the middle and the end, millimetres. */
export type Widths = readonly [start: number, middle: number, end: number];

/**
 * A pen line: a filled sliver whose width swells and dies. Even-width lines are what makes a face look like a
 * cartoon.
 */
export function penLine(curve: Curve, widths: Widths): Path {
  return closedPath(edge(curve, widths, 1), reversed(edge(curve, widths, -1)));
}

export function penThrough(spots: Spots, widths: Widths): Path {
  return penLine(spline(spots), widths);
}

function edge(curve: Curve, widths: Widths, hand: 1 | -1): Curve {
  const n = curve.length;
  return curve.map(([a, b, c, d], i): Piece => {
    const half = (t: number) => (hand * widthAt(widths, (i + t) / n)) / 2;
    return [
      aside(a, a, b, half(0)),
      aside(b, a, b, half(1 / 3)),
      aside(c, c, d, half(2 / 3)),
      aside(d, c, d, half(1)),
    ];
  });
}

function widthAt([start, middle, end]: Widths, t: number): number {
  return t < 0.5 ? blend(start, middle, t * 2) : blend(middle, end, t * 2 - 1);
}

/** The spot moved sideways from the direction from → to. */
function aside(spot: Spot, from: Spot, to: Spot, by: number): Spot {
  const length = distance(from, to) || 1;
  return [spot[0] - ((to[1] - from[1]) / length) * by, spot[1] + ((to[0] - from[0]) / length) * by];
}
