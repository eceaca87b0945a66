import { addDays, daysBetween } from '../quantities/isoDay.ts';
import type { IsoDay } from '../quantities/isoDay.ts';

/**
 * Days from one review to the next. Spacing matters much more than its exact pattern
 * (Latimier, Peyre & Ramus 2021, doi 10.1007/s10648-020-09572-8: spaced against massed 0.74, expanding
 * against even 0.034, not significant).
 */
export const reviewGapsDays = [1, 3, 7, 21] as const;

/** `stage` is how many reviews lie behind; `due` the day of the next one. */
export type Review = Readonly<{ stage: number; due: IsoDay }>;

/**
 * The review after an unaided answer on `today`. Right moves one gap on; wrong begins again tomorrow.
 * After the last gap the skill comes back every 21 days. An answer before the due day changes nothing when it
 * is right.
 */
export function nextReview(before: Review | undefined, isRight: boolean, today: IsoDay): Review {
  if (before && isRight && daysBetween(today, before.due) > 0) return before;
  const last = reviewGapsDays.length - 1;
  const stage = !isRight || !before ? 0 : Math.min(before.stage + 1, last);
  return { stage, due: addDays(today, reviewGapsDays[stage] ?? 1) };
}

/** True on the due day and after it. */
export function isDue(review: Review | undefined, today: IsoDay): boolean {
  return review !== undefined && daysBetween(today, review.due) <= 0;
}
