import { isObject, mergeProgress, noProgress, progressSchema, readProgress } from './progress.ts';
import type { Progress } from './progress.ts';

/**
 * What lies in storage. `aside`: earlier contents that could not be read, kept whole so that nothing is lost.
 */
export type Stored = Progress & Readonly<{ aside?: readonly unknown[] }>;

export type AddToStored =
  | Readonly<{ ok: true; stored: Stored }>
  | Readonly<{ ok: false; reason: 'newer-schema'; schema: number }>;

function withoutAside(value: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(value).filter(([key]) => key !== 'aside'));
}

/**
 * Adds answers to whatever storage holds, as one step that two tabs can run one after the other in either
 * order.
 * Contents that cannot be read, whole or in part, move to `aside`. Newer contents are refused and stay
 * untouched.
 */
export function addToStored(found: unknown, added: Progress): AddToStored {
  if (found === undefined || found === null) return { ok: true, stored: mergeProgress(noProgress, added) };
  const read = readProgress(found);
  if (!read.ok && read.reason === 'newer-schema') return read;
  const kept = isObject(found) && Array.isArray(found['aside']) ? found['aside'] : [];
  const isWhole = read.ok && read.dropped === 0;
  const aside: readonly unknown[] = isWhole ? kept : [...kept, isObject(found) ? withoutAside(found) : found];
  const { answers } = mergeProgress(read.ok ? read.progress : noProgress, added);
  return { ok: true, stored: { schema: progressSchema, answers, ...(aside.length > 0 ? { aside } : {}) } };
}
