import {
  factIds,
  factOf,
  isMethodOf,
  methods,
  rules,
  subjectOfFact,
  subjects,
  type FactId,
  type MethodId,
  type RuleId,
  type Subject,
} from '#lib/catalogue.ts';
import { bibliography, type SourceId } from '#lib/evidence/bibliography.ts';
import type { Status } from '#lib/evidence/fact.ts';
import { checks, checksOf } from './index.ts';

/** What rests on a source. */
export type SourceUses = Readonly<{
  facts: readonly FactId[];
  checks: readonly string[];
  methods: readonly MethodId[];
}>;

export const sourceIds: readonly SourceId[] = Object.keys(bibliography).filter(
  (id): id is SourceId => id in bibliography,
);

export function usesOfSource(source: SourceId): SourceUses {
  return {
    facts: factIds.filter((id) => {
      const { backing } = factOf(id);
      return backing.status === 'published' && backing.source === source;
    }),
    checks: checks.filter((check) => check.source === source).map(({ id }) => id),
    methods: methodIds.filter((id) => methods[id].sources.some((name) => name === source)),
  };
}

export const methodIds: readonly MethodId[] = Object.keys(methods).filter(
  (id): id is MethodId => id in methods,
);

/** The facts of a subject, in the order they are written. */
export function factsOfSubject(subject: Subject): readonly FactId[] {
  return factIds.filter((id) => subjectOfFact(id) === subject);
}

/** The subjects that cite a source: with a fact, a check or a method of theirs. */
export function subjectsOfSource(source: SourceId): readonly Subject[] {
  const { facts, methods: cited } = usesOfSource(source);
  return subjects.filter(
    (subject) =>
      facts.some((id) => subjectOfFact(id) === subject) ||
      checksOf[subject].some((check) => check.source === source) ||
      cited.some((id) => isMethodOf(subject, id)),
  );
}

/** Facts with this grade, in the order they are written. */
export function factsByStatus(status: Status): readonly FactId[] {
  return factIds.filter((id) => factOf(id).backing.status === status);
}

/** Rules that rest on a fact, and rules it speaks against. */
export function rulesOfFact(
  fact: FactId,
): Readonly<{ restOn: readonly RuleId[]; disputed: readonly RuleId[] }> {
  return {
    restOn: rules.filter(({ facts }) => facts.some((id) => id === fact)).map(({ id }) => id),
    disputed: rules.filter(({ disputedBy }) => disputedBy.some((id) => id === fact)).map(({ id }) => id),
  };
}

/** Facts worked out from a fact. */
export function computedFrom(fact: FactId): readonly FactId[] {
  return factIds.filter((id) => {
    const { backing } = factOf(id);
    return backing.status === 'computed' && backing.from.includes(fact);
  });
}

/** Of all facts that are numbers: how many there are, how many were read in a source. */
export function numericFacts(): Readonly<{ all: number; published: number }> {
  const numbers = factIds.filter((id) => typeof factOf(id).value === 'number');
  return {
    all: numbers.length,
    published: numbers.filter((id) => factOf(id).backing.status === 'published').length,
  };
}
