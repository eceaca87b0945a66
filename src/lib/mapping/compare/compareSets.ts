import { intervalAround, type Interval } from '../../quantities/interval.ts';
import { forBrowMarks, type BrowRecord } from '../marks/browRecord.ts';
import type { FacePoint } from '../marks/faceFrame.ts';
import { familyCoverageFactor } from '../uncertainty/familyWise.ts';
import { rowUncertainty, type MarkRow } from '../uncertainty/markRow.ts';
import type { MarkSet, Side } from '../marks/markSet.ts';
import { readFace, type NoFaceReading, type ReadingChoices } from './readFace.ts';
import { unlikeParts, type Unlike } from './unlikeParts.ts';

/** Later minus earlier for one brow mark in the face's frame: outward on its own side and up, mm. */
export type MarkChange = Readonly<{ outward: Interval; up: Interval }>;
export type SetComparison =
  | Readonly<{ ok: true; changes: BrowRecord<Readonly<Record<Side, MarkChange>>>; k: number }>
  | Readonly<{ ok: false; reason: Unlike }>
  | NoFaceReading;

/**
 * What moved between two sets of marks of one face, each in its own frame, so that roll and place in the
 * picture drop out.
 * Refused when the sets were not taken alike, with the first reason. The two sets are read apart, so their
 * uncertainties add as squares.
 */
export function compareSets(earlier: MarkSet, later: MarkSet, choices: ReadingChoices): SetComparison {
  const [unlike] = unlikeParts(earlier.taken, later.taken);
  if (unlike !== undefined) return { ok: false, reason: unlike };
  const before = readFace(earlier, choices);
  if (!before.ok) return before;
  const after = readFace(later, choices);
  if (!after.ok) return after;
  const k = familyCoverageFactor(choices.comparisons === 'one' ? 1 : choices.comparisons);
  const change = (fromMm: number, toMm: number, fromRow: MarkRow, toRow: MarkRow): Interval => {
    const uncertaintyMm = Math.hypot(rowUncertainty(fromRow), rowUncertainty(toRow));
    return intervalAround(toMm - fromMm, uncertaintyMm, k);
  };
  const sideChange = (mark: keyof MarkSet['brows'], side: Side): MarkChange => {
    const from: FacePoint = before.brows[mark][side];
    const to: FacePoint = after.brows[mark][side];
    const fromRows = before.rows.brows[mark][side];
    const toRows = after.rows.brows[mark][side];
    return {
      outward: change(from.uMm, to.uMm, fromRows.u, toRows.u),
      up: change(from.vMm, to.vMm, fromRows.v, toRows.v),
    };
  };
  return {
    ok: true,
    changes: forBrowMarks((mark) => ({ right: sideChange(mark, 'right'), left: sideChange(mark, 'left') })),
    k,
  };
}
