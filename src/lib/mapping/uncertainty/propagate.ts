import { alongMm, quarterTurn, type Direction } from '../../geometry/direction.ts';
import { midpoint } from '../../geometry/distance.ts';
import type { Line } from '../../geometry/line.ts';
import { forBrowMarks, type BrowRecord } from '../marks/browRecord.ts';
import type { FaceFrame } from '../marks/faceFrame.ts';
import type { LevelReference } from '../marks/levelReference.ts';
import type { FacePair, MarkSet, Side } from '../marks/markSet.ts';
import { addPull, addRow, browPlace, emptyRow, facePlace, pairPlace, type MarkRow } from './markRow.ts';
import type { NoMidline } from '../midline/midline.ts';
import { midlineInfluence, type MidlineInfluence, type Through } from './midlineInfluence.ts';
import { mirrorMarksOf } from '../marks/mirrorMarks.ts';

export type FacePointRows = Readonly<{ u: MarkRow; v: MarkRow }>;
/**
 * What the marks are uncertain by, one coordinate, mm: for reading a mark, and for what the midline makes of
 * the marks.
 */
export type MarkUncertainty = Readonly<{ readingMm: number; midlineMm: number }>;

/**
 * What each mark adds to the uncertainty of every number of a face, to first order. Angle in radians, the
 * rest in mm.
 */
export type FaceRows = Readonly<{
  ok: true;
  angle: MarkRow;
  /** Of the midline's place on the picture's x axis, at the height of the middle of the brows. */
  midlineAtBrows: MarkRow;
  brows: BrowRecord<Readonly<Record<Side, FacePointRows>>>;
}>;

/**
 * Carries small moves of the marks through the midline (with its weights), the level reference and the frame
 * to each brow coordinate (GUM, JCGM 100:2008, 5.1.2: linear propagation). The root sum of squares of a row
 * is the uncertainty of its number. Leaving the midline out (√2 u) understates by up to a fifth. With both
 * uncertainties 1 the rows are the slopes.
 */
export function propagate(
  set: MarkSet,
  frame: FaceFrame,
  cutOffMm: number,
  reference: LevelReference,
  { readingMm, midlineMm }: MarkUncertainty,
  through: Through = 'whole',
): FaceRows | NoMidline {
  const influence = midlineInfluence(mirrorMarksOf(set), frame.midline, cutOffMm, through);
  if (!influence.ok) return influence;
  const angle = faceRow(influence.angle, midlineMm);
  const offset = faceRow(influence.offset, midlineMm);
  const { pivot } = influence;
  const normal = frame.midline.normal;
  const along = quarterTurn(normal);
  const level = frame.level;
  const up = quarterTurn(level);
  const levelAngle =
    reference === 'midline'
      ? angle
      : levelRow(reference === 'pupils' ? ['pupil'] : ['innerCorner', 'outerCorner'], set, level, readingMm);
  const pupils = midpoint(set.pairs.pupil.right, set.pairs.pupil.left);

  const rows = (mark: keyof MarkSet['brows'], side: Side): FacePointRows => {
    const point = set.brows[mark][side];
    const out = side === 'left' ? 1 : -1;
    const u = emptyRow();
    addPull(u, browPlace(mark, side), normal, out * readingMm);
    addRow(u, angle, out * (alongMm(point, along) - alongMm(pivot, along)));
    addRow(u, offset, -out);
    const v = emptyRow();
    addPull(v, browPlace(mark, side), up, readingMm);
    addPull(v, pairPlace('pupil', 'right'), up, -readingMm / 2);
    addPull(v, pairPlace('pupil', 'left'), up, -readingMm / 2);
    addRow(v, levelAngle, alongMm(pupils, level) - alongMm(point, level));
    return { u, v };
  };

  const midlineAtBrows = emptyRow();
  addRow(midlineAtBrows, offset, 1 / normal.x);
  const offsetMm = frame.midline.offsetMm - alongMm(pivot, normal);
  addRow(
    midlineAtBrows,
    angle,
    (offsetMm * normal.y - (browHeightMm(set) - pivot.yMm)) / (normal.x * normal.x),
  );
  return {
    ok: true,
    angle,
    midlineAtBrows,
    brows: forBrowMarks((mark) => ({ right: rows(mark, 'right'), left: rows(mark, 'left') })),
  };
}

/** The mean height of all brow marks in the picture, mm. */
export function browHeightMm({ brows }: MarkSet): number {
  const heights = Object.values(brows).flatMap(({ right, left }) => [right.yMm, left.yMm]);
  return heights.reduce((sum, height) => sum + height, 0) / heights.length;
}

/** Where the midline crosses the picture's horizontal at the middle of the brows, mm. */
export function midlineAtBrowsMm(set: MarkSet, { normal, offsetMm }: Line): number {
  return (offsetMm - normal.y * browHeightMm(set)) / normal.x;
}

/** A full row from the pulls of the midline's marks, each mark uncertain by `markMm`. */
function faceRow(pulls: MidlineInfluence['angle'], markMm: number): MarkRow {
  const row = emptyRow();
  pulls.forEach(({ right, left }, i) => {
    addPull(row, facePlace(i, 'right'), right, markMm);
    addPull(row, facePlace(i, 'left'), left, markMm);
  });
  return row;
}

/** How the angle of a level line follows the pairs it is drawn through. */
function levelRow(names: readonly FacePair[], { pairs }: MarkSet, level: Direction, markMm: number): MarkRow {
  const row = emptyRow();
  const lengthMm = names.reduce(
    (sum, name) => sum + alongMm(pairs[name].left, level) - alongMm(pairs[name].right, level),
    0,
  );
  if (!(lengthMm > 0)) return row;
  for (const name of names) {
    addPull(row, pairPlace(name, 'left'), quarterTurn(level), markMm / lengthMm);
    addPull(row, pairPlace(name, 'right'), quarterTurn(level), -markMm / lengthMm);
  }
  return row;
}
