import type { Line } from '../../geometry/line.ts';
import { fitMidline, mismatchMm, type MirrorMarks, type NoMidline } from './midline.ts';

/** Tukey's constant: 95 % efficiency where all errors are normal (Holland & Welsch 1977). */
export const tukeyConstant = 4.685;
/** Makes the median of |x| estimate the spread of a normal x. */
export const medianToSpread = 1.4826;
/**
 * The spread is never taken to be smaller than this, mm: marks that agree by luck must not throw out a fair
 * one.
 */
export const spreadFloorMm = 0.3;
/** A mark that counts for less than this is "not trusted". */
export const trustedFromWeight = 0.25;

export type RobustMidline =
  | Readonly<{
      ok: true;
      line: Line;
      /** 0 (left out) to 1 (counted in full), in the order of the marks. */
      weights: readonly number[];
      /** Half the mismatch of each mark (see mismatchMm), mm. */
      residualsMm: readonly number[];
      /** The mismatch at which the weight becomes 0, mm. */
      cutOffMm: number;
      eigenGapShare: number;
    }>
  | NoMidline;

/** Tukey's biweight: (1 − (r/cut-off)²)², 0 from the cut-off on (Beaton & Tukey 1974). */
export function biweight(residual: number, cutOff: number): number {
  const inside = 1 - (residual / cutOff) ** 2;
  return inside > 0 ? inside * inside : 0;
}

/**
 * The midline with marks that disagree weighed down, in two steps (MM-estimation, Yohai 1987): a start that
 * up to just under half of the marks cannot pull (least trimmed squares), which also fixes the spread; then
 * Tukey's biweight, repeated until it stands still. Marks that move together (a leaning nose: wings and base)
 * are left out together as long as they are fewer than half. A mark only a little off still pulls a little:
 * it cannot be told from chance.
 */
export function fitRobustMidline(
  marks: readonly MirrorMarks[],
  floorMm: number = spreadFloorMm,
): RobustMidline {
  const start = fitTrimmed(marks);
  if (!start.ok) return start;
  let fit = start;
  const cutOffMm =
    tukeyConstant *
    Math.max(floorMm, medianToSpread * median(marks.map((mark) => mismatchMm(mark, start.line))));
  for (let round = 0; round < 200; round++) {
    const { line } = fit;
    const next = fitMidline(
      marks,
      marks.map((mark) => biweight(mismatchMm(mark, line), cutOffMm)),
    );
    if (!next.ok) return next;
    fit = next;
    const moved =
      Math.abs(fit.line.offsetMm - line.offsetMm) +
      100 * Math.abs(fit.line.normal.x * line.normal.y - fit.line.normal.y * line.normal.x);
    if (moved < 1e-12) break;
  }
  const { line, eigenGapShare } = fit;
  const residualsMm = marks.map((mark) => mismatchMm(mark, line));
  return {
    ok: true,
    line,
    weights: residualsMm.map((r) => biweight(r, cutOffMm)),
    residualsMm,
    cutOffMm,
    eigenGapShare,
  };
}

/**
 * Least trimmed squares (Rousseeuw 1984), exact: of all choices of just over half of the marks, the one that
 * mirrors best.
 * Tries 2^n choices: meant for the eight marks of a face, not for long lists.
 */
function fitTrimmed(marks: readonly MirrorMarks[]): ReturnType<typeof fitMidline> {
  const kept = Math.floor(marks.length / 2) + 1;
  let best = fitMidline(marks);
  if (kept >= marks.length) return best;
  let bestCostMm2 = Infinity;
  for (let choice = 0; choice < 2 ** marks.length; choice++) {
    const chosen = marks.filter((_, i) => (choice >> i) & 1);
    if (chosen.length !== kept) continue;
    const fit = fitMidline(chosen);
    if (fit.ok && fit.costMm2 < bestCostMm2) {
      best = fit;
      bestCostMm2 = fit.costMm2;
    }
  }
  return best;
}

/** The middle value; the mean of the two middle ones for an even count; 0 for none. */
function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? 0) + (sorted[Math.floor(half)] ?? 0)) / 2;
}
