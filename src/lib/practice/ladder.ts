/** The rungs of support, most help first. */
export const rungs = ['worked', 'last-blank', 'two-blank', 'bare', 'mixed', 'review'] as const;
export type Rung = (typeof rungs)[number];

/** How one problem ended: right at the first try without a hint, right later or with hints, or not right. */
export type Outcome = 'clean' | 'helped' | 'wrong';

/** How many of the worked steps stand on the page before the learner answers. */
export function stepsShown(rung: Rung, stepCount: number): number {
  if (rung === 'worked') return stepCount;
  if (rung === 'last-blank') return Math.max(0, stepCount - 1);
  if (rung === 'two-blank') return Math.max(0, stepCount - 2);
  return 0;
}

/**
 * The next rung. A clean answer climbs one, a helped one stays, a wrong one steps down one, never under
 * `last-blank`:
 * the worked example stays one press away and need not be forced. `mixed` is left only by the review days.
 */
export function nextRung(rung: Rung, outcome: Outcome): Rung {
  const at = rungs.indexOf(rung);
  if (rung === 'worked') return 'last-blank';
  if (outcome === 'clean') return rungs[Math.min(at + 1, rungs.indexOf('mixed'))] ?? rung;
  if (outcome === 'helped') return rung === 'review' ? 'mixed' : rung;
  return rungs[Math.max(1, Math.min(at - 1, rungs.indexOf('bare')))] ?? rung;
}

/**
 * Where to begin after the three-item check: none right starts at the worked example, all three start
 * unaided.
 */
export function entryRung(rightOfThree: number): Rung {
  if (rightOfThree >= 3) return 'bare';
  if (rightOfThree === 2) return 'two-blank';
  return rightOfThree === 1 ? 'last-blank' : 'worked';
}
