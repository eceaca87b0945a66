import type { Interval } from '../../quantities/interval.ts';

/** Whether a limit is kept: shown to be kept, shown to be broken, or too near to tell. */
export const limitVerdicts = ['keeps', 'breaks', 'too-near'] as const;
export type LimitVerdict = (typeof limitVerdicts)[number];

/** Verdict on a room that is positive where the limit is kept: an interval that holds zero tells nothing. */
export function limitVerdict({ lo, hi }: Pick<Interval, 'lo' | 'hi'>): LimitVerdict {
  if (lo > 0) return 'keeps';
  return hi < 0 ? 'breaks' : 'too-near';
}
