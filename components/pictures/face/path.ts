import { closedSpline, type Curve } from './curve.ts';
import type { Spot, Spots } from '#lib/face/spot.ts';

export type Step =
  | readonly ['M' | 'L', Spot]
  | readonly ['Q', Spot, Spot]
  | readonly ['C', Spot, Spot, Spot]
  | readonly ['Z'];

/** Path steps before placing, y up: roll, the flip to y down and rounding happen once, at the end. */
export type Path = readonly Step[];

const along = (curve: Curve): Path => curve.map(([, b, c, d]): Step => ['C', b, c, d]);

/** The curves joined end to end, not closed. */
export function openPath(...curves: readonly Curve[]): Path {
  return curves.flatMap((curve, i): Path => {
    const start = curve[0]?.[0];
    if (!start) return [];
    return [[i === 0 ? 'M' : 'L', start], ...along(curve)];
  });
}

/** The curves joined end to end and closed: an area. */
export function closedPath(...curves: readonly Curve[]): Path {
  return [...openPath(...curves), ['Z']];
}

export function polygonPath(spots: Spots): Path {
  return [...spots.map((spot, i): Step => [i === 0 ? 'M' : 'L', spot]), ['Z']];
}

/**
 * A circle as four cubic pieces would need a fixed handle; eight splined spots are within 0.3 % and share the
 * code.
 */
export function circlePath([x, y]: Spot, radiusMm: number): Path {
  const spots = Array.from({ length: 8 }, (_, i): Spot => {
    const angle = (i * Math.PI) / 4;
    return [x + radiusMm * Math.cos(angle), y + radiusMm * Math.sin(angle)];
  });
  return closedPath(closedSpline(spots));
}

/** A dot small enough that its shape cannot be seen. */
export function dotPath([x, y]: Spot, radiusMm: number): Path {
  return polygonPath([
    [x - radiusMm, y],
    [x, y + radiusMm],
    [x + radiusMm, y],
    [x, y - radiusMm],
  ]);
}

/** The path with every spot moved by one rule. */
export function mapPath(path: Path, move: (spot: Spot) => Spot): Path {
  return path.map((step): Step => {
    switch (step[0]) {
      case 'Q':
        return ['Q', move(step[1]), move(step[2])];
      case 'C':
        return ['C', move(step[1]), move(step[2]), move(step[3])];
      case 'Z':
        return step;
      default:
        return [step[0], move(step[1])];
    }
  });
}
