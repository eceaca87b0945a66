import { signedDistanceMm, type Line } from '../../geometry/line.ts';
import { fitMidline, mismatchMm, type MirrorMarks } from './midline.ts';
import { biweight, fitRobustMidline } from './robustMidline.ts';

/** The spread is an estimate, too: rivals are looked for with a cut-off a little smaller and larger as well. */
const cutOffTimes = [0.93, 1, 1.07] as const;
/** A midline is another one where brow marks would stand so many mm otherwise. */
const apartMm = 0.45;
/** Where the brows lie, from the pupils up and from the midline out, mm: only to judge what an angle does. */
const browUpMm = 20;
const browOutMm = 60;
/** It fits as well when it loses no more than this; a mark left out altogether loses 1. */
const asGoodAs = 0.05;

/**
 * True where a second midline fits the marks about as well as the robust one: the weights stand still at
 * another line when they begin from all marks, or from all but one. Then a small move of one mark may change
 * every answer.
 */
export function hasRivalMidline(marks: readonly MirrorMarks[]): boolean {
  const fit = fitRobustMidline(marks);
  if (!fit.ok) return false;
  const starts = [marks, ...marks.map((left) => marks.filter((mark) => mark !== left))].flatMap((some) => {
    const begun = fitMidline(some);
    return begun.ok ? [begun.line] : [];
  });
  return cutOffTimes.some((times) => {
    const cutOffMm = times * fit.cutOffMm;
    const ours = lossOf(marks, fit.line, cutOffMm);
    return [fit.line, ...starts].some((start) => {
      const other = stillLine(marks, start, cutOffMm);
      return (
        other !== undefined &&
        partMm(other, fit.line) > apartMm &&
        lossOf(marks, other, cutOffMm) < ours + asGoodAs
      );
    });
  });
}

/** Where Tukey's biweight stands still from a start. */
function stillLine(marks: readonly MirrorMarks[], start: Line, cutOffMm: number): Line | undefined {
  let line = start;
  for (let round = 0; round < 100; round++) {
    const next = fitMidline(
      marks,
      marks.map((mark) => biweight(mismatchMm(mark, line), cutOffMm)),
    );
    if (!next.ok) return undefined;
    const movedMm = partMm(next.line, line);
    line = next.line;
    if (movedMm < 1e-5) break;
  }
  return line;
}

/** Σ of Tukey's loss, 1 − (1 − (r/cut-off)²)³: 0 for a mark on its place, 1 for one that is left out. */
function lossOf(marks: readonly MirrorMarks[], line: Line, cutOffMm: number): number {
  return marks.reduce((sum, mark) => {
    const far = Math.min(1, (mismatchMm(mark, line) / cutOffMm) ** 2);
    return sum + 1 - (1 - far) ** 3;
  }, 0);
}

/** By how much two midlines would place a brow mark otherwise: across, or up and down by their angle. */
function partMm(one: Line, other: Line): number {
  const brows = { xMm: 0, yMm: browUpMm };
  const turn = one.normal.x * other.normal.y - one.normal.y * other.normal.x;
  return Math.max(
    Math.abs(signedDistanceMm(brows, one) - signedDistanceMm(brows, other)),
    browOutMm * Math.abs(turn),
  );
}
