import type { SourceId } from './bibliography.ts';
import type { Backing } from './fact.ts';

/** A value read in a source: which, where in it, and the words that carry the number (at most 25). */
export function published(source: SourceId, where: string, quote: string): Backing {
  return { status: 'published', source, where, quote };
}

/** A value worked out here from other facts or from a printed rule. */
export function computed(note: string, ...from: readonly string[]): Backing {
  return { status: 'computed', from, note };
}

/** A value chosen so that the page has something to show; the reader can change it. */
export function assumed(note: string): Backing {
  return { status: 'assumed', note };
}

/** A habit of the trade, told in plain words because no source was found for it. */
export function commonPractice(note: string): Backing {
  return { status: 'common-practice', note };
}
