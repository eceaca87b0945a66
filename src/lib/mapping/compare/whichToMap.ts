import type { Taken } from '../marks/markSet.ts';
import { unfitToMap } from './unfitToMap.ts';

/**
 * What has changed the brows of late: nothing, toxin that may still be moving them, or a change nobody has
 * explained.
 */
export const latelyChanges = ['nothing', 'toxin', 'unexplained'] as const;
export type LatelyChange = (typeof latelyChanges)[number];

export type WhichToMap =
  | Readonly<{ map: 'first' | 'second' | 'either' | 'neither' }>
  | Readonly<{ map: 'not-yet'; because: 'toxin' | 'unexplained' }>;

/**
 * Which of two readings is mapped. Brows that are still changing outrank a good reading: then none is, yet.
 */
export function whichToMap(first: Taken, second: Taken, lately: LatelyChange): WhichToMap {
  if (lately !== 'nothing') return { map: 'not-yet', because: lately };
  const isFirstFit = unfitToMap(first).length === 0;
  const isSecondFit = unfitToMap(second).length === 0;
  if (isFirstFit) return { map: isSecondFit ? 'either' : 'first' };
  return { map: isSecondFit ? 'second' : 'neither' };
}
