import { clamp, distance, spotAfter, spotAt, type Spot, type Spots } from '#lib/face/spot.ts';

/** One cubic Bézier piece: start, two handles, end. */
export type Piece = readonly [Spot, Spot, Spot, Spot];
export type Curve = readonly Piece[];

/**
 * How far a handle reaches, as a share of the chord: short enough that close neighbours never make a loop.
 */
const reach = 0.36;

/** Smooth curve through the spots (Catmull–Rom directions, handles shortened to the chord). */
export function spline(spots: Spots): Curve {
  const last = spots.length - 1;
  const direction = (i: number): Spot => unit(spotAt(spots, i - 1), spotAt(spots, i + 1));
  return spots
    .slice(0, last)
    .map((from, i) => piece(from, spotAt(spots, i + 1), direction(i), direction(i + 1)));
}

/** The same, closed. */
export function closedSpline(spots: Spots): Curve {
  const n = spots.length;
  const direction = (i: number): Spot => unit(spotAfter(spots, i + n - 2), spotAfter(spots, i));
  return spots.map((from, i) => piece(from, spotAfter(spots, i), direction(i), direction(i + 1)));
}

function unit(from: Spot, to: Spot): Spot {
  const length = distance(from, to) || 1;
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

function piece(from: Spot, to: Spot, leave: Spot, arrive: Spot): Piece {
  const h = distance(from, to) * reach;
  return [
    from,
    [from[0] + leave[0] * h, from[1] + leave[1] * h],
    [to[0] - arrive[0] * h, to[1] - arrive[1] * h],
    to,
  ];
}

export function reversed(curve: Curve): Curve {
  return curve.map(([a, b, c, d]): Piece => [d, c, b, a]).reverse();
}

/** A place on the curve; t from 0 to 1 runs by chord length, so that strands and hatches spread evenly. */
export function onCurve(curve: Curve, t: number): Spot {
  const lengths = curve.map(([a, , , d]) => distance(a, d));
  let left = clamp(t, 0, 1) * lengths.reduce((sum, length) => sum + length, 0);
  for (const [i, part] of curve.entries()) {
    const length = lengths[i] ?? 0;
    if (left <= length || i === curve.length - 1) return onPiece(part, clamp(left / (length || 1), 0, 1));
    left -= length;
  }
  return [0, 0];
}

function onPiece([a, b, c, d]: Piece, t: number): Spot {
  const s = 1 - t;
  const axis = (i: 0 | 1) => s ** 3 * a[i] + 3 * s * s * t * b[i] + 3 * s * t * t * c[i] + t ** 3 * d[i];
  return [axis(0), axis(1)];
}

/** A polygon along curves that follow each other. */
export function polygonOf(...curves: readonly Curve[]): Spots {
  return curves.flatMap((curve) => Array.from({ length: 48 }, (_, i) => onCurve(curve, i / 47)));
}
