import type { Brow, Brows } from '../mapping/marks/brow.ts';
import type { BudgetLine, Reading } from '../mapping/uncertainty/budget.ts';
import type { FaceFrame, FacePoint } from '../mapping/marks/faceFrame.ts';
import { levelReferences } from '../mapping/marks/levelReference.ts';
import {
  browMarks,
  facePairs,
  faceSingles,
  type MarkSet,
  type PairMarks,
  type Taken,
} from '../mapping/marks/markSet.ts';
import type { MirrorMarks } from '../mapping/midline/midline.ts';
import type { Edge } from '../mapping/outline/edge.ts';
import type { Edges } from '../mapping/outline/edges.ts';
import { outlineOf, type Outline } from '../mapping/outline/outline.ts';
import type { HalfEdge } from '../mapping/outline/halfEdge.ts';
import type { HeadPose } from '../mapping/pose/headPose.ts';
import { frontEdges } from '../mapping/placing/drawnLengths.ts';
import { placingMarkNames, type PlacingMarks } from '../mapping/placing/placingMarks.ts';
import type { Repeat } from '../mapping/uncertainty/technicalError.ts';
import { also, between, each, either, list, ok, oneOf, shape, whole, type Domain } from './domain.ts';
import {
  bothSides,
  coordinateMm,
  degrees,
  errorMm,
  factor,
  line,
  onFaceMm,
  point,
  share,
  sides,
  unitDirection,
} from './units.ts';

export const side = oneOf(sides);
export const taken = shape<Taken>({
  pose: oneOf(['rest', 'raised', 'frown', 'eyes-closed']),
  posture: oneOf(['sitting', 'lying']),
  skin: oneOf(['normal', 'numb', 'swollen']),
});
const pairMarks: Domain<PairMarks> = bothSides(point);
export const markSet = shape<MarkSet>({
  pairs: each(facePairs, pairMarks),
  singles: each(faceSingles, point),
  brows: each(browMarks, pairMarks),
  taken,
});
export const mirrorMarks = shape<MirrorMarks>({ right: point, left: point });

export const levelReference = oneOf(levelReferences);
export const facePoint = shape<FacePoint>({ uMm: onFaceMm, vMm: onFaceMm });
export const faceFrame = shape<FaceFrame>({
  midline: line,
  level: unitDirection,
  pupilLevelMm: coordinateMm,
});
export const brow: Domain<Brow> = each(browMarks, facePoint);
export const brows: Domain<Brows> = bothSides(brow);
export const placingMarks: Domain<PlacingMarks> = bothSides(each(placingMarkNames, facePoint));

const halfEdge = shape<HalfEdge>({ end: facePoint, arch: facePoint });
export const edge = shape<Edge>({ front: halfEdge, tail: halfEdge });
export const edges = shape<Edges>({ upper: edge, lower: edge });
export const outline: Domain<Outline> = also(
  shape<Outline>({ ok, brow, upper: edge, lower: edge }),
  (given) => outlineOf(given.brow).ok,
  'be what outlineOf has answered',
);
export const frontEdge = oneOf(frontEdges);

const comparisonCount = whole(1, 1_000_000);
export const comparisons = comparisonCount;
export const comparisonsOrOne = either(oneOf(['one']), comparisonCount);
export const readings = whole(1, 1_000_000);
export const reading = shape<Reading>({ temMm: errorMm, readings, budgetMm: errorMm });
export const budgetLines = list(shape<BudgetLine>({ halfWidthMm: errorMm }), 100);
export const repeats = list(shape<Repeat>({ firstMm: coordinateMm, secondMm: coordinateMm }), 100_000);
export const readingChoice = { readingMm: errorMm, k: factor };
export const stations = list(share, 100);

export const pose = shape<HeadPose>({
  turnDeg: degrees,
  nodDeg: degrees,
  tiltDeg: degrees,
  cameraMm: either(oneOf(['far']), between(0, 100_000)),
});

export const browEnds = shape<{ frontMm: number; tailMm: number }>({ frontMm: onFaceMm, tailMm: onFaceMm });
