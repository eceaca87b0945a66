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

/** The facts of each subject, and its mathematics with where it comes from. */
const bySubject = {
  mapping: { facts: mappingFacts, methods: mappingMethods },
  colour: { facts: colourFacts, methods: colourMethods },
  firstAid: { facts: firstAidFacts, methods: {} },
  practice: { facts: practiceFacts, methods: {} },
} as const;

/** What the library knows about: facts, rules and mathematics belong to one subject each. */
export type Subject = keyof typeof bySubject;

/** All subjects, in the order in which pages show them. */
export const subjects: readonly Subject[] = ['mapping', 'colour', 'firstAid', 'practice'];

/** The subject that a fact belongs to. */
export function subjectOfFact(id: FactId): Subject {
  const found = subjects.find((subject) => Object.hasOwn(bySubject[subject].facts, id));
  if (found === undefined) throw new Error(`The fact "${id}" belongs to no subject.`);
  return found;
}

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

/** True when the mathematics belongs to this subject. */
export function isMethodOf(subject: Subject, id: MethodId): boolean {
  return Object.hasOwn(bySubject[subject].methods, id);
}
