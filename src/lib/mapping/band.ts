import { includesZero, type Interval } from '../quantities/interval.ts';

/** Who sees a difference: not shown to be real; real, few see it; real, most see it. */
export const bands = ['not-shown', 'few-see', 'most-see'] as const;
export type Band = (typeof bands)[number];

/** Sizes at which few viewers and at which most viewers notice, mm. They are facts: passed in, never written here. */
export type NoticeThresholds = Readonly<{ mostSeeMm: number }>;

/**
 * The band of one difference. An interval that holds zero is "not shown" whatever its size: that is not "equal".
 */
export function bandOf(difference: Interval, { mostSeeMm }: NoticeThresholds): Band {
  if (includesZero(difference)) return 'not-shown';
  return Math.abs(difference.value) >= mostSeeMm ? 'most-see' : 'few-see';
}
