import type { PlanTask } from '#lib/mapping/plan/planHeights.ts';
import { handBrow, lifted, limitsOf } from './tasks.ts';

export const task: PlanTask = {
  brows: { right: handBrow, left: lifted(handBrow, 1.4) },
  free: 'right',
  old: {},
  limits: { right: limitsOf(2, 2), left: limitsOf(2, 2) },
  marginMm: 0,
  weights: { right: 1, left: 1 },
};
