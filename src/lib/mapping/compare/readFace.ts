import { intervalAround, type Interval } from '../../quantities/interval.ts';
import { bandOf, type Band, type NoticeThresholds } from './band.ts';
import { forBrowMarks, type BrowRecord } from '../marks/browRecord.ts';
import { budgetMm, markUncertaintyMm, type BudgetLine } from '../uncertainty/budget.ts';
import { faceFrame, type FaceFrame, type FacePoint } from '../marks/faceFrame.ts';
import { familyCoverageFactor } from '../uncertainty/familyWise.ts';
import type { LevelReference } from '../marks/levelReference.ts';
import { addRow, rowUncertainty, type MarkRow } from '../uncertainty/markRow.ts';
import type { FacePair, FaceSingle, MarkSet } from '../marks/markSet.ts';
import { everyMarkIsInReach, midlineMarks, mirrorMarksOf, type MidlineMark } from '../marks/mirrorMarks.ts';
import { disagreementMm } from '../midline/disagreement.ts';
import { midlineAtBrowsMm, propagate, type FaceRows } from '../uncertainty/propagate.ts';
import { fitRobustMidline, trustedFromWeight } from '../midline/robustMidline.ts';
import { rollDeg } from '../marks/roll.ts';
import { compareSides } from './sides.ts';

/** How the face was measured and how it is judged. */
export type ReadingChoices = Readonly<{
  levelReference: LevelReference;
  /** Technical error of one reading of one mark, mm. */
  temMm: number;
  /** Readings averaged into each mark. */
  readings: number;
  /** What reading again does not shrink. */
  budget: readonly BudgetLine[];
  /** How many differences are judged together, or 'one': each as if it stood alone. */
  comparisons: number | 'one';
  notice: NoticeThresholds;
}>;

export type Difference = Interval & Readonly<{ band: Band }>;
export type BrowReading = Readonly<{
  right: FacePoint;
  left: FacePoint;
  outward: Difference;
  up: Difference;
}>;

export type FaceReading = Readonly<{
  ok: true;
  frame: FaceFrame;
  /** Lean of the head in the picture, degrees, with its interval at 95 % for itself alone. */
  rollDeg: Interval;
  /**
   * Picture x of the midline at the mean height of the brows, mm, with its interval at 95 % for itself alone.
   */
  midlineAtBrowsMm: Interval;
  /** Weight 0 to 1 and half mismatch of each mark the midline was fitted to. */
  marks: Readonly<Record<MidlineMark, Readonly<{ weight: number; residualMm: number }>>>;
  /** Marks that disagree with the rest and were weighed down. */
  notTrusted: readonly (FacePair | FaceSingle)[];
  brows: BrowRecord<BrowReading>;
  /** Standard uncertainty of one coordinate of one mark by reading, mm. */
  readingMm: number;
  /** The same for the midline's marks: larger where they disagree by more than reading explains. */
  midlineMm: number;
  /** Coverage factor of the differences. */
  k: number;
  /** For changes between two sets. */
  rows: FaceRows;
}>;
/** What of a reading is drawn, said and put into tables. */
export type ShownReading = Omit<FaceReading, 'rows'>;
export type NoFaceReading = Readonly<{
  ok: false;
  reason: 'mark-not-a-number' | 'marks-do-not-fix-a-midline' | 'face-not-upright';
}>;

/**
 * The midline may lean this far in the picture; beyond, the picture is on its side or right and left are
 * exchanged.
 */
export const greatestRollDeg = 60;

/**
 * Everything the brow calculator says about one face: midline, what was weighed down, both sides in the
 * face's frame, left minus right for ten numbers with intervals and bands. `decomposeBrows(reading.brows)`
 * gives shift, tilt and size.
 * The intervals hold the error of reading the marks and, for the midline, how far its own marks disagree.
 */
export function readFace(set: MarkSet, choices: ReadingChoices): FaceReading | NoFaceReading {
  if (!everyMarkIsInReach(set)) return { ok: false, reason: 'mark-not-a-number' };
  const fit = fitRobustMidline(mirrorMarksOf(set));
  if (!fit.ok) return fit;
  const { line, weights, residualsMm } = fit;
  if (Math.abs(rollDeg(line)) > greatestRollDeg) return { ok: false, reason: 'face-not-upright' };
  const frame = faceFrame(set, line, choices.levelReference);
  const readingMm = markUncertaintyMm({ ...choices, budgetMm: budgetMm(choices.budget) });
  const midlineMm = Math.max(readingMm, disagreementMm(mirrorMarksOf(set), fit));
  const rows = propagate(set, frame, fit.cutOffMm, choices.levelReference, { readingMm, midlineMm });
  if (!rows.ok) return rows;

  const alone = familyCoverageFactor(1);
  const k = choices.comparisons === 'one' ? alone : familyCoverageFactor(choices.comparisons);
  const sides = compareSides(set, frame);
  const difference = (valueMm: number, left: MarkRow, right: MarkRow): Difference => {
    const row = [...left];
    addRow(row, right, -1);
    const interval = intervalAround(valueMm, rowUncertainty(row), k);
    return { ...interval, band: bandOf(interval, choices.notice) };
  };
  const mark = (name: MidlineMark) => {
    const i = midlineMarks.indexOf(name);
    return { weight: weights[i] ?? 0, residualMm: residualsMm[i] ?? 0 };
  };
  return {
    ok: true,
    frame,
    rollDeg: intervalAround(rollDeg(line), (rowUncertainty(rows.angle) * 180) / Math.PI, alone),
    midlineAtBrowsMm: intervalAround(midlineAtBrowsMm(set, line), rowUncertainty(rows.midlineAtBrows), alone),
    marks: {
      innerCorner: mark('innerCorner'),
      outerCorner: mark('outerCorner'),
      pupil: mark('pupil'),
      noseWing: mark('noseWing'),
      glabella: mark('glabella'),
      nasion: mark('nasion'),
      subnasale: mark('subnasale'),
      chin: mark('chin'),
    },
    notTrusted: midlineMarks.filter((name) => mark(name).weight < trustedFromWeight),
    brows: forBrowMarks((name) => {
      const { right, left, outwardMm, upMm } = sides[name];
      const row = rows.brows[name];
      return {
        right,
        left,
        outward: difference(outwardMm, row.left.u, row.right.u),
        up: difference(upMm, row.left.v, row.right.v),
      };
    }),
    readingMm,
    midlineMm,
    k,
    rows,
  };
}
