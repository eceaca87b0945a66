import { includesZero, type Interval } from '../../quantities/interval.ts';

/** Who sees a difference: not shown to be real; real, and few, some or most people see it. */
export const bands = ['not-shown', 'few-see', 'some-see', 'most-see'] as const;
export type Band = (typeof bands)[number];

/**
 * Up to which size few viewers notice, and from which size most do, mm; between them some do. They are facts:
 * passed in, never written here.
 */
export type NoticeThresholds = Readonly<{ fewSeeMm: number; mostSeeMm: number }>;

/**
 * The band of one difference. An interval that holds zero is "not shown" whatever its size: that is not
 * "equal".
 */
export function bandOf(difference: Interval, { fewSeeMm, mostSeeMm }: NoticeThresholds): Band {
  if (includesZero(difference)) return 'not-shown';
  const sizeMm = Math.abs(difference.value);
  if (sizeMm >= mostSeeMm) return 'most-see';
  return sizeMm > fewSeeMm ? 'some-see' : 'few-see';
}
