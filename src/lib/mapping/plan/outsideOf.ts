import { diff, type Geometry, type MultiPolygon, type Position } from 'martinez-polygon-clipping';
import type { FacePoint } from '../marks/faceFrame.ts';
import type { Outline } from '../outline/outline.ts';
import { outlinePolygon } from '../outline/outlineCurves.ts';
import { spanAt, type Span } from '../outline/span.ts';
import { signedAreaMm2, type OldShape } from './oldShape.ts';

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
  const left = diff([ringOf(old.corners)], [ringOf(outlinePolygon(outline, steps))]) ?? [];
  const polygons = isMany(left) ? left : [left];
  const rings = polygons.flatMap((polygon) =>
    polygon.map((ring, i) => ({ corners: pointsOf(ring), sign: i === 0 ? 1 : -1 })),
  );
  const seen = rings.filter(({ corners }) => Math.abs(signedAreaMm2(corners)) > leastPieceMm2);
  const pieces = seen.filter(({ sign }) => sign === 1).map(({ corners }) => corners);
  const farthest = (way: (point: FacePoint) => number) =>
    pieces.flat().reduce((most, point) => Math.max(most, way(point)), 0);
  const { frontTop, frontLower, tail } = outline.brow;
  const frontMm = Math.min(frontTop.uMm, frontLower.uMm);
  const beside = (way: (point: FacePoint, span: Span) => number) => (point: FacePoint) => {
    const span = spanAt(outline, point.uMm);
    return span ? way(point, span) : 0;
  };
  return {
    areaMm2: seen.reduce((sum, { corners, sign }) => sum + sign * Math.abs(signedAreaMm2(corners)), 0),
    pieces,
    aboveMm: farthest(beside(({ vMm }, { upperMm }) => vMm - upperMm)),
    belowMm: farthest(beside(({ vMm }, { lowerMm }) => lowerMm - vMm)),
    beforeFrontMm: farthest(({ uMm }) => frontMm - uMm),
    beyondTailMm: farthest(({ uMm }) => uMm - tail.uMm),
  };
}

/** The package answers with one polygon or with many: a list of rings, or a list of such lists. */
function isMany(shape: Geometry): shape is MultiPolygon {
  return Array.isArray(shape[0]?.[0]?.[0]);
}

function pointsOf(ring: readonly Position[]): readonly FacePoint[] {
  return ring.slice(1).map(([uMm, vMm]) => ({ uMm, vMm }));
}

/**
 * Corners on a grid far finer than any reading: the package loses its way, or a piece, between corners that
 * differ in their last digits only. On the grid such corners are one.
 */
const stepsPerMm = 1e6;
const onGrid = (mm: number): number => Math.round(mm * stepsPerMm) / stepsPerMm;

function ringOf(corners: readonly FacePoint[]): Position[] {
  const ring = corners.map(({ uMm, vMm }): Position => [onGrid(uMm), onGrid(vMm)]);
  const [first] = ring;
  return first ? [...ring, first] : [];
}
