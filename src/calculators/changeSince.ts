import { compareSets, type SetComparison } from '#lib/mapping/compare/compareSets.ts';
import { choicesOf, type MidlineAndSidesState, readingOf } from './midlineAndSides.ts';

/** What moved between an earlier reading and this one; refused where the two were not taken alike. */
export function changeSince(earlier: MidlineAndSidesState, now: MidlineAndSidesState): SetComparison {
  return compareSets(readingOf(earlier), readingOf(now), choicesOf(now));
}
