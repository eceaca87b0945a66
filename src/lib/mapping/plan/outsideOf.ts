import { diff, type Geometry, type MultiPolygon, type Position } from 'martinez-polygon-clipping';
import type { FacePoint } from '../marks/faceFrame.ts';
import type { Outline } from '../outline/outline.ts';
import { outlinePolygon } from '../outline/outlineCurves.ts';
import { spanAt, type Span } from '../outline/span.ts';
import { signedAreaMm2, type OldShape } from './oldShape.ts';
import { outsideAreaMm2 } from './outsideArea.ts';

/** What of the old shape lies outside an outline, by polygons. */
export type Outside = Readonly<{
  areaMm2: number;
  /** The pieces, each a closed line of corners. */
  pieces: readonly (readonly FacePoint[])[];
  /**
   * How far the old shape stands out at most: above the upper edge, below the lower one, in front of the
   * front, beyond the tail, mm.
   */
  aboveMm: number;
  belowMm: number;
  beforeFrontMm: number;
  beyondTailMm: number;
}>;

/** Chords to each half of an edge. */
const steps = 96;
/** Pieces smaller than this are rounding. */
const leastPieceMm2 = 1e-4;

/**
 * The part of an old shape that an outline does not cover. The outline's curves are cut into chords: that
 * errs by less than 0.01 mm².
 */
export function outsideOf(old: OldShape, outline: Outline): Outside {
  const rings = ringsOutside(old, outline);
  const pieces = rings.filter(({ sign }) => sign === 1).map(({ corners }) => corners);
  const farthest = (way: (point: FacePoint) => number) =>
    pieces.flat().reduce((most, point) => Math.max(most, way(point)), 0);
  const { frontTop, frontLower, tail } = outline.brow;
  const frontMm = Math.min(frontTop.uMm, frontLower.uMm);
  const beside = (way: (point: FacePoint, span: Span) => number) => (point: FacePoint) => {
    const span = spanAt(outline, point.uMm);
    return span ? way(point, span) : 0;
  };
  return {
    areaMm2: areaOf(rings),
    pieces,
    aboveMm: farthest(beside(({ vMm }, { upperMm }) => vMm - upperMm)),
    belowMm: farthest(beside(({ vMm }, { lowerMm }) => lowerMm - vMm)),
    beforeFrontMm: farthest(({ uMm }) => frontMm - uMm),
    beyondTailMm: farthest(({ uMm }) => uMm - tail.uMm),
  };
}

type Ring = Readonly<{ corners: readonly FacePoint[]; sign: 1 | -1 }>;

const areaOf = (rings: readonly Ring[]): number =>
  rings.reduce((sum, { corners, sign }) => sum + sign * Math.abs(signedAreaMm2(corners)), 0);

/**
 * The package loses its way, or a piece, where edges all but touch. So its area is held against the true one,
 * and where it is another the old shape is laid a hair away, far less than anything read: on a grid on which
 * corners that differ in their last digits only are one, as it is, or moved up and out by so much, mm.
 */
const layings = [
  { gridMm: 1e-6, movedMm: 0 },
  { gridMm: 0, movedMm: 0 },
  { gridMm: 1e-6, movedMm: 1.3e-5 },
  { gridMm: 1e-6, movedMm: -1.7e-5 },
  { gridMm: 1e-4, movedMm: 0 },
  { gridMm: 1e-3, movedMm: 0 },
] as const;
type Laying = (typeof layings)[number];
/** Layings and chords change an area by less, mm². */
const chordsMm2 = 0.02;

/** What the package finds outside in the first laying in which its area is the true one, else where it comes nearest. */
function ringsOutside(old: OldShape, outline: Outline): readonly Ring[] {
  const trueMm2 = outsideAreaMm2(old, outline);
  const polygon = outlinePolygon(outline, steps);
  let [nearest, leastOffMm2]: [readonly Ring[], number] = [[], Infinity];
  for (const laying of layings) {
    const rings = ringsLaid(laying, old.corners, polygon);
    const offMm2 = rings ? Math.abs(areaOf(rings) - trueMm2) : Infinity;
    if (rings && offMm2 < leastOffMm2) [nearest, leastOffMm2] = [rings, offMm2];
    if (leastOffMm2 <= chordsMm2) break;
  }
  return nearest;
}

/** One look by the package; undefined where it throws. */
function ringsLaid(
  { gridMm, movedMm }: Laying,
  old: readonly FacePoint[],
  outline: readonly FacePoint[],
): readonly Ring[] | undefined {
  try {
    const left = diff([ringOf(old, gridMm, movedMm)], [ringOf(outline, gridMm, 0)]) ?? [];
    return (isMany(left) ? left : [left])
      .flatMap((polygon) =>
        polygon.map((ring, i): Ring => ({ corners: pointsOf(ring), sign: i === 0 ? 1 : -1 })),
      )
      .filter(({ corners }) => Math.abs(signedAreaMm2(corners)) > leastPieceMm2);
  } catch {
    return undefined;
  }
}

/** The package answers with one polygon or with many: a list of rings, or a list of such lists. */
function isMany(shape: Geometry): shape is MultiPolygon {
  return Array.isArray(shape[0]?.[0]?.[0]);
}

function pointsOf(ring: readonly Position[]): readonly FacePoint[] {
  return ring.slice(1).map(([uMm, vMm]) => ({ uMm, vMm }));
}

function ringOf(corners: readonly FacePoint[], gridMm: number, movedMm: number): Position[] {
  const on = (mm: number) => (gridMm > 0 ? Math.round((mm + movedMm) / gridMm) * gridMm : mm + movedMm);
  const ring = corners.map(({ uMm, vMm }): Position => [on(uMm), on(vMm)]);
  const [first] = ring;
  return first ? [...ring, first] : [];
}
