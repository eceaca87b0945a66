import type { Fact } from './evidence/fact.ts';
import { mappingFacts } from './mapping/facts.ts';
import { practiceFacts } from './practice/facts.ts';

/** Every fact of the site, one map: pages and content name facts by these ids. */
export const facts = { ...mappingFacts, ...practiceFacts } as const;

export type FactId = keyof typeof facts;

/** All fact ids, in the order they are written. */
export const factIds = Object.keys(facts).filter(isFactId);

/** True when the text names a fact. */
export function isFactId(text: string): text is FactId {
  return Object.hasOwn(facts, text);
}

/** The fact with this id, with its value type opened up to number or habit. */
export function factOf(id: FactId): Fact | Fact<'practice'> {
  return facts[id];
}
