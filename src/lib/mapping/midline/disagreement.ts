import type { MirrorMarks } from './midline.ts';
import type { RobustMidline } from './robustMidline.ts';

/**
 * The spread of one coordinate of one mark that the marks' own mismatches speak for, mm: √(Σ w r² / freedom),
 * r counted so that reading error alone would give its own size (a pair has two parts, a single mark one; the
 * line takes two away).
 * Where it is larger than the reading error the face, not the hand, is uneven, and what rests on the midline
 * is less sure:
 * the uncertainty is raised to it and never lowered (Birge's ratio: Birge, Phys. Rev. 40:207, 1932).
 */
export function disagreementMm(
  marks: readonly MirrorMarks[],
  { weights, residualsMm }: Extract<RobustMidline, { ok: true }>,
): number {
  let squares = 0;
  let freedom = -2;
  marks.forEach(({ right, left }, i) => {
    const isSingle = right.xMm === left.xMm && right.yMm === left.yMm;
    const w = weights[i] ?? 0;
    const r = residualsMm[i] ?? 0;
    squares += w * r * r * (isSingle ? 1 : 2);
    freedom += w * (isSingle ? 1 : 2);
  });
  return Math.sqrt(squares / Math.max(1, freedom));
}
