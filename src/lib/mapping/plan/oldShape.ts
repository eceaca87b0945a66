import type { FacePoint } from '../marks/faceFrame.ts';

/**
 * The outline of the old work on one side, in the face's frame: corners against the clock (u to the right, v
 * up), no two edges crossing.
 */
export type OldShape = Readonly<{ ok: true; corners: readonly FacePoint[]; areaMm2: number }>;
export type NoOldShape = Readonly<{
  ok: false;
  reason: 'too-few-corners' | 'not-a-number' | 'crosses-itself' | 'no-area';
}>;

/** A corner further out than this is not on a face. */
const reachMm = 200;
/** Below this the corners lie on a line. */
const leastAreaMm2 = 0.01;
/** Edges no farther apart than this lie on each other, mm. */
const onEachOtherMm = 1e-9;

/**
 * Reads corners, in either direction of turning, as an old shape. At least three, on the face, with an area
 * and without a crossing.
 */
export function readOldShape(corners: readonly FacePoint[]): OldShape | NoOldShape {
  if (corners.length < 3) return { ok: false, reason: 'too-few-corners' };
  if (!corners.every(({ uMm, vMm }) => Math.abs(uMm) <= reachMm && Math.abs(vMm) <= reachMm))
    return { ok: false, reason: 'not-a-number' };
  if (crossesItself(corners)) return { ok: false, reason: 'crosses-itself' };
  const turnedMm2 = signedAreaMm2(corners);
  if (!(Math.abs(turnedMm2) >= leastAreaMm2)) return { ok: false, reason: 'no-area' };
  return {
    ok: true,
    corners: turnedMm2 > 0 ? corners : [...corners].reverse(),
    areaMm2: Math.abs(turnedMm2),
  };
}

/** The area inside a closed line of corners by the shoelace sum: positive against the clock, mm². */
export function signedAreaMm2(corners: readonly FacePoint[]): number {
  return edgesOf(corners).reduce((sum, [a, b]) => sum + (a.uMm * b.vMm - b.uMm * a.vMm) / 2, 0);
}

/** The edges of a closed line of corners, each from one corner to the next. */
export function edgesOf(corners: readonly FacePoint[]): readonly (readonly [FacePoint, FacePoint])[] {
  return corners.map((corner, i) => [corner, corners[(i + 1) % corners.length] ?? corner]);
}

function crossesItself(corners: readonly FacePoint[]): boolean {
  const edges = edgesOf(corners);
  return (
    edges.some(([a, b], i) => edges.some(([c, d], j) => j > i && isCrossing(a, b, c, d))) ||
    !windsOnce(corners, edges)
  );
}

/**
 * True when the line of corners, no two edges of which cross inside both, goes round every place once or not
 * at all, and always the same way: a line that passes through its own corner, or runs round twice, does not.
 * Between two neighbouring places of corners the edges keep their order, so that one look up each such strip
 * tells how often the line goes round each part of it.
 */
function windsOnce(corners: readonly FacePoint[], edges: ReturnType<typeof edgesOf>): boolean {
  const places = corners.map(({ uMm }) => uMm).sort((a, b) => a - b);
  let [least, most] = [0, 0];
  places.forEach((from, i) => {
    const middle = (from + (places[i + 1] ?? from)) / 2;
    const passed = edges
      .filter(([a, b]) => a.uMm < middle !== b.uMm < middle)
      .map(([a, b]) => ({
        vMm: a.vMm + ((b.vMm - a.vMm) * (middle - a.uMm)) / (b.uMm - a.uMm),
        way: a.uMm < b.uMm ? 1 : -1,
      }))
      .sort((one, other) => one.vMm - other.vMm);
    let rounds = 0;
    passed.forEach(({ vMm, way }, k) => {
      rounds += way;
      if ((passed[k + 1]?.vMm ?? vMm) - vMm < onEachOtherMm) return;
      least = Math.min(least, rounds);
      most = Math.max(most, rounds);
    });
  });
  return most - least <= 1;
}

/** True when two edges cross inside both; edges that only share a corner do not. */
function isCrossing(a: FacePoint, b: FacePoint, c: FacePoint, d: FacePoint): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

function turn(a: FacePoint, b: FacePoint, c: FacePoint): number {
  return (b.uMm - a.uMm) * (c.vMm - a.vMm) - (b.vMm - a.vMm) * (c.uMm - a.uMm);
}
