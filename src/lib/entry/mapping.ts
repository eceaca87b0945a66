import { compareSets as insideCompareSets } from '../mapping/compare/compareSets.ts';
import { decomposeBrows as insideDecompose } from '../mapping/compare/decomposeBrows.ts';
import {
  faceFrame as insideFrame,
  toFace as insideToFace,
  toPicture as insideToPicture,
} from '../mapping/marks/faceFrame.ts';
import { browMarks } from '../mapping/marks/markSet.ts';
import { fitMidline as insideMidline } from '../mapping/midline/midline.ts';
import { mirrorMarksOf as insideMirror } from '../mapping/marks/mirrorMarks.ts';
import { readFace as insideRead, type ReadingChoices } from '../mapping/compare/readFace.ts';
import { fitRobustMidline as insideRobust } from '../mapping/midline/robustMidline.ts';
import { rollDeg as insideRoll } from '../mapping/marks/roll.ts';
import { compareSides as insideSides } from '../mapping/compare/sides.ts';
import { between, above0, each, list, maybe, refusing, shape, throwing, type Checked } from './domain.ts';
import * as of from './mappingDomains.ts';
import { bothSides, errorMm, lengthMm, line, point } from './units.ts';

export {
  browMarks,
  facePairs,
  faceSingles,
  type BrowMark,
  type FacePair,
  type FaceSingle,
  type MarkSet,
  type PairMarks,
  type Pose,
  type Posture,
  type Side,
  type SkinState,
  type Taken,
} from '../mapping/marks/markSet.ts';
export { midlineMarks, type MidlineMark } from '../mapping/marks/mirrorMarks.ts';
export { levelReferences, type LevelReference } from '../mapping/marks/levelReference.ts';
export { bands, type Band, type NoticeThresholds } from '../mapping/compare/band.ts';
export type { Brow, Brows } from '../mapping/marks/brow.ts';
export type { BrowRecord } from '../mapping/marks/browRecord.ts';
export type {
  BrowReading,
  Difference,
  FaceReading,
  NoFaceReading,
  ReadingChoices,
} from '../mapping/compare/readFace.ts';
export type { MarkChange, SetComparison } from '../mapping/compare/compareSets.ts';
export type { Unlike } from '../mapping/compare/unlikeParts.ts';
export type { MidlineFit, MirrorMarks, NoMidline } from '../mapping/midline/midline.ts';
export type { RobustMidline } from '../mapping/midline/robustMidline.ts';
export type { FaceFrame, FacePoint } from '../mapping/marks/faceFrame.ts';
export type { MarkSides } from '../mapping/compare/sides.ts';
export type { BrowDecomposition, BrowDecompositionFit } from '../mapping/compare/decomposeBrows.ts';
export type { Repeat, TechnicalError } from '../mapping/uncertainty/technicalError.ts';
export type { FacePointRows, FaceRows } from '../mapping/uncertainty/propagate.ts';
export type { MarkRow } from '../mapping/uncertainty/markRow.ts';

const choices = shape<ReadingChoices>({
  levelReference: of.levelReference,
  temMm: errorMm,
  readings: of.readings,
  budget: of.budgetLines,
  comparisons: of.comparisonsOrOne,
  notice: shape({ fewSeeMm: lengthMm, mostSeeMm: lengthMm }),
});

/** Everything about one face: midline, marks not trusted, and left minus right for ten numbers with intervals. */
export const readFace: Checked<typeof insideRead> = refusing(insideRead, 'set choices', of.markSet, choices);

/** What moved between two sets of marks of one face, with intervals. */
export const compareSets: Checked<typeof insideCompareSets> = refusing(
  insideCompareSets,
  'earlier later choices',
  of.markSet,
  of.markSet,
  choices,
);

/** A face's marks as mirror pairs, in the order of `midlineMarks`: what a midline is fitted to. */
export const mirrorMarksOf: typeof insideMirror = throwing(insideMirror, 'set', of.markSet);

/** The line in which marks mirror each other best, by weighted least squares. */
export const fitMidline: Checked<typeof insideMidline> = refusing(
  insideMidline,
  'marks weights',
  list(of.mirrorMarks, 100_000),
  maybe(list(between(0, 1e6), 100_000)),
);

/** The same with marks that disagree weighed down. At most 16 marks: it tries every choice of half of them. */
export const fitRobustMidline: Checked<typeof insideRobust> = refusing(
  insideRobust,
  'marks floorMm',
  list(of.mirrorMarks, 16),
  maybe(above0(50)),
);

/** How far the head leans in the picture, degrees; positive: the client's left side is the higher one. */
export const rollDeg: typeof insideRoll = throwing(insideRoll, 'midline', line);

/** The face's own frame from its midline and what counts as level. */
export const faceFrame: typeof insideFrame = throwing(
  insideFrame,
  'set midline reference',
  of.markSet,
  line,
  of.levelReference,
);

/** From the picture to the face's frame. */
export const toFace: typeof insideToFace = throwing(
  insideToFace,
  'point side frame',
  point,
  of.side,
  of.faceFrame,
);

/** From the face's frame back to the picture. */
export const toPicture: typeof insideToPicture = throwing(
  insideToPicture,
  'point side frame',
  of.facePoint,
  of.side,
  of.faceFrame,
);

/** Both sides of every brow mark in the face's frame, left minus right. */
export const compareSides: typeof insideSides = throwing(insideSides, 'set frame', of.markSet, of.faceFrame);

/** The left brow against the mirrored right one: shift, tilt, size and what is left. */
export const decomposeBrows: Checked<typeof insideDecompose> = refusing(
  insideDecompose,
  'sides',
  each(browMarks, bothSides(of.facePoint)),
);
