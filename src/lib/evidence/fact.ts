import type { IsoDay } from '../quantities/isoDay.ts';
import type { Unit } from '../quantities/unit.ts';
import type { SourceId } from './bibliography.ts';

/** What stands behind a value. A quote is at most 25 words, from a source that was opened. */
export type Backing =
  | Readonly<{ status: 'published'; source: SourceId; where: string; quote: string }>
  | Readonly<{ status: 'computed'; from: readonly string[]; note: string }>
  | Readonly<{ status: 'common-practice' | 'from-memory' | 'assumed'; note: string }>;

/** One number (or word) of the trade: the only place where it is written. */
export type Fact<T = number> = Readonly<{
  value: T;
  unit: Unit;
  backing: Backing;
  range?: readonly [T, T];
  /** What keeps the value from saying more than it says: who was measured, how. */
  caveat?: string;
  reviewed: IsoDay;
}>;

/** A habit of the trade: no number and no source, said as what it is. */
export type Practice = Fact<'practice'>;

/** What a body tells people to do, in its own words: no number, but a source that was read. */
export type Advice = Fact<'advice'>;

export type Status = Backing['status'];

/** All statuses, strongest first. */
export const statuses: readonly Status[] = [
  'published',
  'computed',
  'common-practice',
  'from-memory',
  'assumed',
];

/** The weakest status among facts: a result is no stronger than its weakest number. */
export function weakestStatus(facts: readonly Fact<unknown>[]): Status {
  const ranks = facts.map((fact) => statuses.indexOf(fact.backing.status));
  return statuses[Math.max(0, ...ranks)] ?? 'assumed';
}
