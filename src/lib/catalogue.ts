import { colourFacts } from './colour/facts.ts';
import { colourMethods } from './colour/methods.ts';
import { colourRules, type ColourQuestion } from './colour/rules.ts';
import type { Advice, Fact, Practice } from './evidence/fact.ts';
import { firstAidFacts } from './firstAid/facts.ts';
import { mappingFacts } from './mapping/facts.ts';
import { mappingMethods } from './mapping/methods.ts';
import { mappingRules, type MappingQuestion } from './mapping/rules.ts';
import { practiceFacts } from './practice/facts.ts';

/** Every fact of the site, one map: pages and content name facts by these ids. */
export const facts = { ...mappingFacts, ...practiceFacts, ...colourFacts, ...firstAidFacts } as const;

export type FactId = keyof typeof facts;

/** All fact ids, in the order they are written. */
export const factIds = Object.keys(facts).filter(isFactId);

/** True when the text names a fact. */
export function isFactId(text: string): text is FactId {
  return Object.hasOwn(facts, text);
}

/** The fact with this id, with its value type opened up to number, habit or advice. */
export function factOf(id: FactId): Fact | Practice | Advice {
  return facts[id];
}

/** Every rule of the site: their ids are the addresses of their cards. */
export const rules = [...mappingRules, ...colourRules] as const;
export type RuleId = (typeof rules)[number]['id'];
export type Question = MappingQuestion | ColourQuestion;

/** Every piece of mathematics with where it comes from. */
export const methods = { ...mappingMethods, ...colourMethods } as const;
export type MethodId = keyof typeof methods;
