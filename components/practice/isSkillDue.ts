import { isDue, type Review } from '#lib/practice/schedule.ts';
import type { IsoDay } from '#lib/quantities/isoDay.ts';
import { isAsked } from './isAsked.ts';

/** True where a skill is asked and its review has come. What was answered stays kept either way. */
export const isSkillDue = (skill: string, review: Review | undefined, day: IsoDay): boolean =>
  isAsked(skill) && isDue(review, day);
