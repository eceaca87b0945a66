import type { BrowPlan } from '#lib/face/browPlan.ts';

/** Heavier, straighter, nearer the eye. */
export const lowBrow = {
  frontLowerV: 8.6,
  frontThicknessMm: 7.8,
  archShare: 0.62,
  archTopV: 17.6,
  archThicknessMm: 6.8,
  tailV: 11.4,
} as const satisfies Partial<BrowPlan>;

export const flatBrow = {
  frontLowerV: 12,
  frontThicknessMm: 6.4,
  archShare: 0.6,
  archTopV: 19.4,
  archThicknessMm: 5.6,
  tailV: 14.6,
} as const satisfies Partial<BrowPlan>;

export const highBrow = {
  frontLowerV: 12.6,
  frontThicknessMm: 6,
  archShare: 0.68,
  archTopV: 23.4,
  archThicknessMm: 5.2,
  tailV: 15.4,
} as const satisfies Partial<BrowPlan>;
