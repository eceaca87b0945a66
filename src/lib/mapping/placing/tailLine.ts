import { lineThrough } from '../../geometry/crossing.ts';
import { signedDistanceMm } from '../../geometry/line.ts';
import type { PointMm } from '../../geometry/point.ts';
import type { FacePoint } from '../marks/faceFrame.ts';
import type { PlacingMarks } from './placingMarks.ts';

/**
 * The tail line of one side, from the nose wing over the outer eye corner. The corner must stand above the
 * wing.
 */
export type TailLine = Readonly<{ wing: FacePoint; corner: FacePoint }>;

/**
 * Where a tail end lies against the tail line, mm, positive inside (towards the midline): the shortest way to
 * the line, and level, at the tail's own height. `limitMm` is the line's distance from the midline at that
 * height; `along` is the place of the tail's foot on the line, 0 at the wing and 1 at the corner.
 */
export type TailAgainstLine =
  | Readonly<{ ok: true; limitMm: number; insideMm: number; insideLevelMm: number; along: number }>
  | Readonly<{ ok: false; reason: 'corner-not-above-wing' }>;

/** How far out the line stands at a height, mm. */
export function tailLimitAtMm({ wing, corner }: TailLine, vMm: number): number {
  return wing.uMm + ((corner.uMm - wing.uMm) * (vMm - wing.vMm)) / (corner.vMm - wing.vMm);
}

/** The line of one side. */
export function tailLineOf({
  noseWing,
  outerCorner,
}: Pick<PlacingMarks['right'], 'noseWing' | 'outerCorner'>): TailLine {
  return { wing: noseWing, corner: outerCorner };
}

/**
 * One line for both sides, from the means of the two wings and of the two corners: a lean of the nose
 * cancels.
 */
export function sharedTailLine({
  right,
  left,
}: Readonly<Record<'right' | 'left', Pick<PlacingMarks['right'], 'noseWing' | 'outerCorner'>>>): TailLine {
  return { wing: mean(right.noseWing, left.noseWing), corner: mean(right.outerCorner, left.outerCorner) };
}

/** One tail end against one line. */
export function tailAgainstLine(line: TailLine, tail: FacePoint): TailAgainstLine {
  const { wing, corner } = line;
  const through = lineThrough(plain(corner), plain(wing));
  if (!(corner.vMm > wing.vMm) || !through) return { ok: false, reason: 'corner-not-above-wing' };
  const outMm = corner.uMm - wing.uMm;
  const upMm = corner.vMm - wing.vMm;
  const limitMm = tailLimitAtMm(line, tail.vMm);
  return {
    ok: true,
    limitMm,
    insideMm: -signedDistanceMm(plain(tail), through),
    insideLevelMm: limitMm - tail.uMm,
    along: ((tail.uMm - wing.uMm) * outMm + (tail.vMm - wing.vMm) * upMm) / (outMm * outMm + upMm * upMm),
  };
}

function plain({ uMm, vMm }: FacePoint): PointMm {
  return { xMm: uMm, yMm: vMm };
}

function mean(a: FacePoint, b: FacePoint): FacePoint {
  return { uMm: (a.uMm + b.uMm) / 2, vMm: (a.vMm + b.vMm) / 2 };
}
