import { compareSets, type SetComparison } from '#lib/mapping/compare/compareSets.ts';
import { choicesOf, readingOf } from './midlineAndSides.ts';
import type { MidlineAndSidesState } from './midlineAndSidesFields.ts';

/** What moved between an earlier reading and this one; refused where the two were not taken alike. */
export function changeSince(earlier: MidlineAndSidesState, now: MidlineAndSidesState): SetComparison {
  return compareSets(readingOf(earlier), readingOf(now), choicesOf(now));
}
