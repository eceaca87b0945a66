import { quadraticRoots } from '../../algebra/quadraticRoots.ts';
import type { Edge } from './edge.ts';
import type { Edges } from './edges.ts';
import { endSlope, type HalfEdge } from './halfEdge.ts';
import { spanAt } from './span.ts';

/** A slope that changes with u as steepness + bend·(u − fromMm)². */
type Bow = Readonly<{ steepness: number; bend: number; fromMm: number }>;

/**
 * True when the upper border stands over the lower one everywhere between front and tail. Exact: between two
 * neighbouring marks the gap is a cubic, so it is least at a mark or where the two slopes agree, which is a
 * root of a quadratic.
 */
export function edgesStayApart(edges: Edges): boolean {
  const { upper, lower } = edges;
  const knots = [upper.front.end, lower.front.end, upper.front.arch, lower.front.arch, upper.tail.end]
    .map(({ uMm }) => uMm)
    .sort((a, b) => a - b);
  const first = knots[0] ?? 0;
  const tail = upper.tail.end.uMm;
  const isOpen = (uMm: number) => {
    const span = spanAt(edges, uMm);
    return span !== undefined && span.upperMm > span.lowerMm;
  };
  return knots.every((from, i) => {
    const to = knots[i + 1] ?? from;
    const places = leastGapsMm(edges, from, to);
    return places.every(isOpen) && (from === first || from === tail || isOpen(from));
  });
}

/** Places strictly between two neighbouring marks where the gap may be least. */
function leastGapsMm({ upper, lower }: Edges, fromMm: number, toMm: number): readonly number[] {
  const front = frontBow(upper.front.end, lower.front.end);
  const over = bowOf(upper, fromMm, front);
  const under = bowOf(lower, fromMm, front);
  const a = fromMm - over.fromMm;
  const b = fromMm - under.fromMm;
  const roots = quadraticRoots(
    over.bend - under.bend,
    2 * (over.bend * a - under.bend * b),
    over.steepness + over.bend * a * a - under.steepness - under.bend * b * b,
  );
  return roots.map((root) => fromMm + root).filter((uMm) => uMm > fromMm && uMm < toMm);
}

function bowOf({ front, tail }: Edge, fromMm: number, straight: Bow): Bow {
  if (fromMm < front.end.uMm) return straight;
  return fromMm < front.arch.uMm ? halfBow(front) : halfBow(tail);
}

/** m(1 − t²) with t = (u − u_end)/h. */
function halfBow(half: HalfEdge): Bow {
  const steepness = endSlope(half);
  return { steepness, bend: -steepness / (half.arch.uMm - half.end.uMm) ** 2, fromMm: half.end.uMm };
}

/** The straight front; asked for only where it leans. */
function frontBow(top: HalfEdge['end'], foot: HalfEdge['end']): Bow {
  return { steepness: (top.vMm - foot.vMm) / (top.uMm - foot.uMm), bend: 0, fromMm: 0 };
}
