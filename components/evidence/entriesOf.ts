import type { Check } from '#checks/check.ts';
import { checksOf } from '#checks/index.ts';
import { factsOfSubject, sourceIds, subjectsOfSource } from '#checks/uses.ts';
import { factOf, type FactId, type Subject } from '#lib/catalogue.ts';
import type { SourceId } from '#lib/evidence/bibliography.ts';
import { statuses, type Status } from '#lib/evidence/fact.ts';
import { shortName } from '#words/evidence.ts';

type Entries = Readonly<{
  checks: readonly Check[];
  facts: readonly FactId[];
  /** The same facts by grade, strongest first; grades without a fact are left out. */
  grades: readonly Readonly<{ status: Status; ids: readonly FactId[] }>[];
  sources: readonly SourceId[];
}>;

/** What the page of one part holds; sources by the names they are cited with. */
export function entriesOf(subject: Subject): Entries {
  const facts = factsOfSubject(subject);
  return {
    checks: checksOf[subject],
    facts,
    grades: statuses
      .map((status) => ({ status, ids: facts.filter((id) => factOf(id).backing.status === status) }))
      .filter(({ ids }) => ids.length > 0),
    sources: sourceIds
      .filter((id) => subjectsOfSource(id).includes(subject))
      .toSorted((a, b) => shortName(a).localeCompare(shortName(b), 'en-GB')),
  };
}
