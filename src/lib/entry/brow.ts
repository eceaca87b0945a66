import { edgeHeightMm as insideHeight, edgeShares as insideShares } from '../mapping/outline/edge.ts';
import { outlineOf as insideOutline } from '../mapping/outline/outline.ts';
import {
  outlineCurves as insideCurves,
  outlinePolygon as insidePolygon,
} from '../mapping/outline/outlineCurves.ts';
import {
  outlineAreaMm2 as insideArea,
  outlinePerimeterMm as insidePerimeter,
} from '../mapping/outline/outlineSize.ts';
import { thicknessAt as insideThickness } from '../mapping/outline/thickness.ts';
import { falseDifferences as insideFalse } from '../mapping/pose/falseDifferences.ts';
import {
  mmPerUnit as insidePerUnit,
  scaleDoubtMm as insideDoubt,
  type IrisScale,
} from '../mapping/pose/irisScale.ts';
import { mayRead as insideMayRead, photoNumbers, type PictureTaken } from '../mapping/pose/mayRead.ts';
import {
  turnFakesMm as insideFakes,
  turnLikeNoseOff as insideNoseOff,
  turnSign as insideSign,
} from '../mapping/pose/turnSign.ts';
import { above0, between, oneOf, refusing, shape, throwing, whole, yesOrNo, type Checked } from './domain.ts';
import * as of from './mappingDomains.ts';
import { degrees, errorMm, factor, lengthMm, onFaceMm } from './units.ts';

export { outlineFaults, type NoOutline, type Outline } from '../mapping/outline/outline.ts';
export type { Edge, EdgeShares } from '../mapping/outline/edge.ts';
export type { Edges } from '../mapping/outline/edges.ts';
export type { Cubic, HalfEdge } from '../mapping/outline/halfEdge.ts';
export type { NoThickness, Thickness } from '../mapping/outline/thickness.ts';
export { straightPose, type CameraMm, type HeadPose } from '../mapping/pose/headPose.ts';
export type { FalseDifferences, NoFalseDifferences } from '../mapping/pose/falseDifferences.ts';
export type { AtBrow } from '../mapping/pose/readPosed.ts';
export type { IrisScale } from '../mapping/pose/irisScale.ts';
export {
  farEnoughCm,
  photoNumbers,
  refusals,
  type MayRead,
  type PhotoNumber,
  type PhotoRefusal,
  type PictureTaken,
} from '../mapping/pose/mayRead.ts';

/** The outline through the five marks of a brow, or the first reason why they make none. */
export const outlineOf: Checked<typeof insideOutline> = refusing(insideOutline, 'brow', of.brow);

/** Height of an edge at a place, mm; undefined beyond its ends. */
export const edgeHeightMm: typeof insideHeight = throwing(insideHeight, 'edge uMm', of.edge, onFaceMm);

/** What each mark's height gives to an edge's height at a place; undefined beyond its ends. */
export const edgeShares: typeof insideShares = throwing(insideShares, 'edge uMm', of.edge, onFaceMm);

/** The outline as four exact cubic Bézier curves. */
export const outlineCurves: typeof insideCurves = throwing(insideCurves, 'outline', of.outline);

/** The outline as a polygon, each half edge cut into so many steps. */
export const outlinePolygon: typeof insidePolygon = throwing(
  insidePolygon,
  'outline steps',
  of.outline,
  whole(1, 10_000),
);

/** Area of an outline, mm². */
export const outlineAreaMm2: typeof insideArea = throwing(insideArea, 'outline', of.outline);

/** Length of the line around an outline, mm. */
export const outlinePerimeterMm: typeof insidePerimeter = throwing(insidePerimeter, 'outline', of.outline);

/** Thickness across the brow at a place, mm. */
export const thicknessAt: Checked<typeof insideThickness> = refusing(
  insideThickness,
  'edges uMm',
  of.edges,
  onFaceMm,
);

/** The differences that a pose of the head fakes on an exactly symmetric face. */
export const falseDifferences: Checked<typeof insideFalse> = refusing(insideFalse, 'pose', of.pose);

const pictureTaken = shape<PictureTaken>({
  atRest: yesOrNo,
  levelKnown: yesOrNo,
  nodChecked: yesOrNo,
  mirrorKnown: yesOrNo,
  cameraCm: between(0, 10_000),
  hasRuler: yesOrNo,
});

/** Whether a number may be read off a picture, and if not, the first thing that forbids it. */
export const mayRead: typeof insideMayRead = throwing(
  insideMayRead,
  'number taken',
  oneOf(photoNumbers),
  pictureTaken,
);

/** Which way a picture looks turned, from front and tail, left minus right. */
export const turnSign: typeof insideSign = throwing(
  insideSign,
  'differences',
  shape({ frontMm: onFaceMm, tailMm: onFaceMm, leastMm: lengthMm }),
);

/** What a turn fakes between marks that lie at different depths, mm. */
export const turnFakesMm: typeof insideFakes = throwing(insideFakes, 'aheadMm turnDeg', onFaceMm, degrees);

/** The turn that shows the nose base so far off the middle of the eyes, degrees. */
export const turnLikeNoseOff: Checked<typeof insideNoseOff> = refusing(insideNoseOff, 'offMm', onFaceMm);

const irisScale = shape<IrisScale>({ irisMm: above0(50), spreadMm: errorMm });

/** Picture units to millimetres by a visible iris. */
export const mmPerUnit: typeof insidePerUnit = throwing(
  insidePerUnit,
  'irisUnits scale',
  above0(1e6),
  irisScale,
);

/** What such a scale leaves open on a length, ± mm. */
export const scaleDoubtMm: typeof insideDoubt = throwing(
  insideDoubt,
  'lengthMm scale k',
  onFaceMm,
  irisScale,
  factor,
);
