import { disturbanceFor, type PracticeLevel } from '#lib/face/disturbance.ts';
import type { Face } from '#lib/face/face.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import { nearPicture } from '#lib/face/practicePicture.ts';
import { mapMarks, readAgain } from '#lib/face/readAgain.ts';
import { withOldWork } from '#lib/face/withOldWork.ts';
import { bisectorOf, lineThrough, xAtHeightMm } from '#lib/geometry/crossing.ts';
import { midpoint } from '#lib/geometry/distance.ts';
import type { Line } from '#lib/geometry/line.ts';
import type { PointMm } from '#lib/geometry/point.ts';
import type { MarkSet } from '#lib/mapping/marks/markSet.ts';
import { readFace, type FaceReading, type NoFaceReading } from '#lib/mapping/compare/readFace.ts';
import { mappingValues } from '#lib/mapping/numbers/values.ts';
import { isInRange, rangeAround, type ClosedRange } from '#lib/quantities/closedRange.ts';
import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import type { Ends, Off, PlacedMark, PlaceMidlineSlip } from '#words/skills/placeMidline.ts';

/**
 * A practice face on the ruler: its 0 is never the midline, so the numbers must be read. Everything in
 * picture millimetres, y up.
 */
export type PlaceMidlineGiven = Readonly<{
  seed: number;
  level: PracticeLevel;
  face: Face;
  /** The face stands this far to the right in the picture. */
  shiftMm: number;
  markSet: MarkSet;
  /** Heights at which a line is marked: mean of the brow marks, and the chin. */
  browHeightMm: number;
  chinHeightMm: number;
}>;

/**
 * The true midline, how far the head leans (top to the client's right: positive), and what is right at both
 * heights.
 */
export type PlaceMidlineAnswer = Readonly<{
  kind: 'line';
  exact: Ends;
  leanDeg: number;
  brows: ClosedRange;
  chin: ClosedRange;
}>;

const toleranceMm = mappingValues['placing-tolerance-mm'];
/**
 * A slip is offered where no line can belong to it and to the right answer: two tolerances away at one end at
 * least.
 */
const leastSlipMm = 2 * toleranceMm;
/**
 * What a level promises must be there to see. Every level of a seed shows the same person, so all are asked
 * of each.
 */
const least = { heightDifferenceMm: 0.8, rollDeg: 1.5, noseLeanMm: 2 } as const;

/** The first seed of this one's own row whose face shows what its levels are called after. */
function faceSeed(seed: number): number {
  for (let deal = 0; ; deal++) {
    const candidate = deal === 0 ? seed : seedFrom('place-the-midline', seed, deal);
    const { heightDifferenceMm, rollDeg, noseLeanMm } = disturbanceFor(candidate, 3);
    if (
      Math.abs(heightDifferenceMm) >= least.heightDifferenceMm &&
      Math.abs(rollDeg) >= least.rollDeg &&
      Math.abs(noseLeanMm) >= least.noseLeanMm
    )
      return candidate;
  }
}

/** 3 to 7 mm to either side, to a tenth. */
function shiftFor(seed: number): number {
  const draw = drawFrom(seedFrom('ruler', seed));
  const side = draw() < 0.5 ? -1 : 1;
  return (side * Math.round(30 + 40 * draw())) / 10;
}

function given(seed: number, level: PracticeLevel): PlaceMidlineGiven {
  const dealt = faceSeed(seed);
  // From near, both sides shrink alike and the midline stays one line; a turned head would bend it.
  const { face: seen, markSet, truth } = practiceFace(dealt, level, nearPicture(dealt));
  const face = level === 4 ? withOldWork(seen, dealt) : seen;
  const shiftMm = shiftFor(seed);
  const shifted = mapMarks(markSet, ({ xMm, yMm }) => ({ xMm: xMm + shiftMm, yMm }));
  return {
    seed,
    level,
    face,
    shiftMm,
    markSet: shifted,
    browHeightMm: truth.browHeightMm,
    chinHeightMm: shifted.singles.chin.yMm,
  };
}

/** Built, not fitted: the midline is x = 0 of the upright face, turned and moved with it. */
function answer({
  face: { rollDeg },
  shiftMm,
  browHeightMm,
  chinHeightMm,
}: PlaceMidlineGiven): PlaceMidlineAnswer {
  const slope = Math.tan((rollDeg * Math.PI) / 180);
  const exact = { browsMm: shiftMm - browHeightMm * slope, chinMm: shiftMm - chinHeightMm * slope };
  const range = (xMm: number) => rangeAround(xMm, toleranceMm, 1);
  return { kind: 'line', exact, leanDeg: rollDeg, brows: range(exact.browsMm), chin: range(exact.chinMm) };
}

function endsOf(line: Line | undefined, { browHeightMm, chinHeightMm }: PlaceMidlineGiven): Ends | undefined {
  const browsMm = line && xAtHeightMm(line, browHeightMm);
  const chinMm = line && xAtHeightMm(line, chinHeightMm);
  return browsMm === undefined || chinMm === undefined ? undefined : { browsMm, chinMm };
}

/** Where a thread between two pins crosses the two heights. */
function placed(top: PointMm, foot: PointMm, face: PlaceMidlineGiven): Ends | undefined {
  return endsOf(lineThrough(top, foot), face);
}

const wrongWays: Readonly<Record<PlaceMidlineSlip, (marks: MarkSet) => Line | undefined>> = {
  'followed-nose': ({ singles }) => lineThrough(singles.glabella, singles.subnasale),
  'brow-fronts': ({ brows }) => bisectorOf(brows.frontLower.right, brows.frontLower.left),
  'kept-vertical': ({ pairs }) => ({
    normal: { x: 1, y: 0 },
    offsetMm: midpoint(pairs.innerCorner.right, pairs.innerCorner.left).xMm,
  }),
  'one-pair': ({ pairs }) => bisectorOf(pairs.noseWing.right, pairs.noseWing.left),
};
const slipIds = ['followed-nose', 'brow-fronts', 'kept-vertical', 'one-pair'] as const;

function away(one: Ends, other: Ends): number {
  return Math.max(Math.abs(one.browsMm - other.browsMm), Math.abs(one.chinMm - other.chinMm));
}

/** The named wrong methods that lead elsewhere on this face, each with the line it gives. */
function slips(face: PlaceMidlineGiven): readonly Readonly<{ id: PlaceMidlineSlip; ends: Ends }>[] {
  const { exact } = answer(face);
  return slipIds.flatMap((id) => {
    const ends = endsOf(wrongWays[id](face.markSet), face);
    return ends && away(ends, exact) > leastSlipMm ? [{ id, ends }] : [];
  });
}

/**
 * Marks a placed line: all for both ends, half for one. A wrong line is named after the nearest slip within
 * the tolerance at both ends.
 */
function mark(face: PlaceMidlineGiven, ends: Ends): PlacedMark {
  const { exact, brows, chin } = answer(face);
  const off: Off = { browsMm: ends.browsMm - exact.browsMm, chinMm: ends.chinMm - exact.chinMm };
  const browsAreRight = isInRange(brows, ends.browsMm);
  const chinIsRight = isInRange(chin, ends.chinMm);
  if (browsAreRight && chinIsRight) return { right: true, credit: 1, off, browsAreRight, chinIsRight };
  const [nearest] = slips(face)
    .filter((slip) => away(slip.ends, ends) <= toleranceMm)
    .toSorted((a, b) => away(a.ends, ends) - away(b.ends, ends));
  return {
    right: false,
    credit: browsAreRight || chinIsRight ? 0.5 : 0,
    off,
    browsAreRight,
    chinIsRight,
    ...(nearest && { slipId: nearest.id }),
  };
}

/**
 * One careful reading of the face's marks, and what the library makes of it: the midline with its interval.
 */
function libraryReading({ markSet, seed }: PlaceMidlineGiven): FaceReading | NoFaceReading {
  const temMm = mappingValues['example-error-mm'];
  return readFace(readAgain(markSet, seed, temMm), {
    levelReference: 'midline',
    temMm,
    readings: 1,
    budget: (['pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm'] as const).map(
      (id) => ({ halfWidthMm: mappingValues[id] }),
    ),
    comparisons: 'one',
    notice: { fewSeeMm: mappingValues['few-see-mm'], mostSeeMm: mappingValues['most-see-mm'] },
  });
}

/**
 * Place the midline on a drawn face. Its answer is a line, so it stands beside the skills that ask for a
 * number or a choice.
 * Right within the placing tolerance at brow height and at the chin, measured straight across.
 */
export const placeMidline = {
  id: 'place-the-midline',
  version: 1,
  given,
  answer,
  placed,
  slips,
  mark,
  libraryReading,
  facts: [
    'placing-tolerance-mm',
    'example-error-mm',
    'pencil-half-width-mm',
    'caliper-half-width-mm',
    'thread-half-width-mm',
    'factor-95',
  ],
} as const;
