import { type FactId, subjectOfFact } from '#lib/catalogue.ts';
import { partPath } from './evidenceParts.ts';

/** Where a fact stands with what is behind it. Nothing else writes such an address. */
export function evidenceAddress(id: FactId): string {
  return `${partPath(subjectOfFact(id))}#${id}`;
}
