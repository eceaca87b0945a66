/**
 * The library's entry for use from outside: everything it computes, by subject. The site's own parts import
 * the modules themselves. Points are in the picture's frame (x to the client's left, y up), lengths in
 * millimetres, angles in degrees.
 * Nothing throws for what a user can type: expected absence is `{ ok: false, reason }`.
 */
export type { PointMm } from './geometry/point.ts';
export { reflectInLine, signedDistanceMm, type Line } from './geometry/line.ts';
export { fitSimilarity, type SimilarityFit } from './geometry/similarity.ts';
export { includesZero, intervalAround, type Interval } from './quantities/interval.ts';
export { drawFrom, seedFrom } from './quantities/seed.ts';

export { browMarks, facePairs, faceSingles, type MarkSet } from './mapping/markSet.ts';
export { readFace, type FaceReading, type ReadingChoices } from './mapping/readFace.ts';
export { compareSets, type SetComparison } from './mapping/compareSets.ts';
export { fitMidline, type MidlineFit } from './mapping/midline.ts';
export { fitRobustMidline, type RobustMidline } from './mapping/robustMidline.ts';
export { rollDeg } from './mapping/roll.ts';
export { faceFrame, toFace, toPicture, type FaceFrame, type FacePoint } from './mapping/faceFrame.ts';
export { compareSides } from './mapping/sides.ts';
export { decomposeBrows } from './mapping/decomposeBrows.ts';
export type { Brow, Brows } from './mapping/brow.ts';
export { edgeHeightMm, edgeShares } from './mapping/outline/edge.ts';
export { outlineOf, type Outline } from './mapping/outline/outline.ts';
export { outlineCurves, outlinePolygon } from './mapping/outline/outlineCurves.ts';
export { outlineAreaMm2, outlinePerimeterMm } from './mapping/outline/outlineSize.ts';
export { thicknessAt, type Thickness } from './mapping/outline/thickness.ts';
export { falseDifferences, type FalseDifferences } from './mapping/pose/falseDifferences.ts';
export { straightPose, type HeadPose } from './mapping/pose/headPose.ts';
export { anchorDistances, type AnchorDistance, type FrontAnchor } from './mapping/placing/anchorDistances.ts';
export { sharedTailLine, tailAgainstLine, type TailLine } from './mapping/placing/tailLine.ts';
export { placeFrontAndTail, type Placing, type PlacingChoices } from './mapping/placing/placeFrontAndTail.ts';
export { placingMarksOf, type PlacingMarks } from './mapping/placing/placingMarks.ts';
export { technicalError, repeatabilityMm } from './mapping/technicalError.ts';
export { budgetMm, markUncertaintyMm, readingsNeeded, smallestRealDifferenceMm } from './mapping/budget.ts';
export { comparePasses, type PassComparison } from './mapping/error/comparePasses.ts';
export { meanOfReadings } from './mapping/error/meanOfReadings.ts';
export { spreadInterval, type SpreadInterval } from './mapping/error/spreadInterval.ts';
export { studentFactor } from './mapping/error/studentFactor.ts';
export {
  afterFirstPass,
  browAfterFirstPass,
  type BrowAgain,
  type BrowsAgain,
} from './mapping/again/afterFirstPass.ts';
export { falseAlarmRate, familyCoverageFactor } from './mapping/familyWise.ts';

export { planCorrections, type CorrectionPlan } from './mapping/plan/planCorrections.ts';
export { readOldShape, type OldShape } from './mapping/plan/oldShape.ts';
export { outsideOf } from './mapping/plan/outsideOf.ts';
export { growthSince } from './mapping/plan/growth.ts';

export { practiceFace, type PracticeFace } from './face/practiceFace.ts';
export { readAgain } from './face/readAgain.ts';
export { leaningNoseFace } from './face/demonstration.ts';

export { ciede2000 } from './colour/ciede2000.ts';
export { lamps, type Lamp } from './colour/lamps.ts';
export { spectrumToLab, spectrumToXyz } from './colour/observe.ts';
export { labToXyz, xyzToLab, type Lab, type Xyz } from './colour/lab.ts';
export { labToLch, lchToLab, type Lch } from './colour/lch.ts';
export { labToSrgb, srgbToHex } from './colour/srgb.ts';
export { srgbToLab } from './colour/srgbToLab.ts';
export { ita, itaClasses, type ItaClass } from './colour/ita.ts';
export { readSkin, type SkinReading, type Touch } from './colour/reading/skinReading.ts';
export { photoReading, type Patch, type PhotoReading } from './colour/reading/photoReading.ts';
export { patchOf } from './colour/reading/patchOf.ts';
export { photoSkin, tintOf, type PhotoSkin } from './colour/reading/photoSkin.ts';
export { lightnessTooHigh, lightSlope, type LightSlope } from './colour/reading/lightSlope.ts';
export { skinPlausibility, type Plausibility } from './colour/reading/skinPlausibility.ts';
export { layerOver, layerTransmittance, thickReflectance, type Layer } from './colour/kubelkaMunk.ts';
export { seenThroughSurface, withinSurface, type Surface } from './colour/saunderson.ts';
export { skinSpectrum } from './colour/skinSpectrum.ts';
export { partedAt, skinOptics, type SkinOptics } from './colour/skinOptics.ts';
export { overOldPigment } from './colour/oldPigment.ts';
export { mixLayer, pigmentIds, type PigmentId, type Shares } from './colour/pigments.ts';
export { healedColour, type Setting } from './colour/healedColour.ts';
export { outcomesAround, plainPrediction, simulatedHealings, type Plan } from './colour/uncertainHealing.ts';
export { depthsLookedAt, dosesBetween, lossesLookedAt } from './colour/why/healingAxes.ts';
export { healingMap, type HealedWork, type HealingCell } from './colour/why/healingMap.ts';
export { fittingSet, type FittingSet } from './colour/why/fittingSet.ts';
