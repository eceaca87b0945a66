import type { FacePoint } from '../marks/faceFrame.ts';
import type { Outline } from '../outline/outline.ts';
import { outlinePolygon } from '../outline/outlineCurves.ts';
import { areaRow, edgeSpans } from './edgeSpans.ts';
import { heightsOf, listOf } from './heights.ts';
import { edgesOf, signedAreaMm2, type OldShape } from './oldShape.ts';
import { rowValue } from './row.ts';

/** How much larger an outline is than the old work under it; below nought where it is smaller. */
export type Growth = Readonly<{
  /** Mean gain in thickness, straight up, over the stretch that both cover, mm. */
  thicknessMm: number;
  areaMm2: number;
  /** The gain in area as a share of the old area. */
  share: number;
}>;
export type NoGrowth = Readonly<{ ok: false; reason: 'nothing-shared' }>;

/** Growth since the old work. It is always shown: what is added cannot be taken away. */
export function growthSince(old: OldShape, outline: Outline): (Growth & Readonly<{ ok: true }>) | NoGrowth {
  const now = outlinePolygon(outline, steps);
  const [fromMm, toMm] = [Math.max(least(old.corners), least(now)), Math.min(most(old.corners), most(now))];
  if (!(toMm > fromMm)) return { ok: false, reason: 'nothing-shared' };
  const strip = (corners: readonly FacePoint[]) =>
    Math.abs(signedAreaMm2(cut(cut(corners, fromMm, 1), toMm, -1)));
  const areaMm2 = rowValue(areaRow(edgeSpans(outline.brow)), listOf(heightsOf(outline.brow))) - old.areaMm2;
  return {
    ok: true,
    thicknessMm: (strip(now) - strip(old.corners)) / (toMm - fromMm),
    areaMm2,
    share: areaMm2 / old.areaMm2,
  };
}

/**
 * What the margin alone adds to a brow's thickness at every refresh, mm: the margin above and below the old
 * edge, each factor × the standard uncertainty of a mark.
 */
export function growthFromMarginMm(marginFactor: number, markUncertaintyMm: number): number {
  return 2 * marginFactor * markUncertaintyMm;
}

/** Chords to each half of an edge. */
const steps = 96;
const least = (corners: readonly FacePoint[]): number =>
  corners.reduce((to, { uMm }) => Math.min(to, uMm), Infinity);
const most = (corners: readonly FacePoint[]): number =>
  corners.reduce((to, { uMm }) => Math.max(to, uMm), -Infinity);

/**
 * The part of a closed line of corners beyond (sign 1) or before (sign −1) an upright line (Sutherland &
 * Hodgman 1974). Its area is right even where it falls apart.
 */
function cut(corners: readonly FacePoint[], atMm: number, sign: 1 | -1): readonly FacePoint[] {
  const isKept = ({ uMm }: FacePoint) => sign * (uMm - atMm) >= 0;
  return edgesOf(corners).flatMap(([a, b]) => {
    const crossing = (): FacePoint => ({
      uMm: atMm,
      vMm: a.vMm + ((b.vMm - a.vMm) * (atMm - a.uMm)) / (b.uMm - a.uMm),
    });
    return [...(isKept(a) ? [a] : []), ...(isKept(a) === isKept(b) ? [] : [crossing()])];
  });
}
