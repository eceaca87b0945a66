import {
  newAnswers,
  noProgress,
  progressSchema,
  readProgress,
  type Answered,
  type Progress,
} from '#lib/practice/progress.ts';
import { addToStored, type Stored } from '#lib/practice/stored.ts';

/**
 * One place to keep a value. `update` is atomic against other tabs; both may throw when storage is denied or
 * full.
 */
export type Place = Readonly<{
  kind: 'indexeddb' | 'localstorage' | 'memory';
  read: () => Promise<unknown>;
  update: (change: (found: unknown) => unknown) => Promise<void>;
}>;

/** `newer`: data of a newer version lies here and is not touched. */
export type Kept = Readonly<{ progress: Progress; kind: Place['kind']; newer: boolean; setAside: number }>;

export type Store = Readonly<{
  load: () => Promise<Kept>;
  add: (answered: Answered) => Promise<Kept>;
  merge: (progress: Progress) => Promise<Kept>;
  /** The text of a copy: everything that is kept, with what had to be set aside. */
  copy: () => Promise<string>;
}>;

/** The text of a chosen file, read for a preview: nothing is changed yet. */
export type Copy =
  | Readonly<{ ok: true; progress: Progress; total: number; fresh: number; dropped: number }>
  | Readonly<{ ok: false; reason: 'too-large' | 'not-a-copy' | 'newer-schema' }>;

export const largestCopy = 8_000_000;

export function readCopy(text: string, have: Progress): Copy {
  if (text.length > largestCopy) return { ok: false, reason: 'too-large' };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, reason: 'not-a-copy' };
  }
  const read = readProgress(value);
  if (!read.ok) return { ok: false, reason: read.reason === 'newer-schema' ? 'newer-schema' : 'not-a-copy' };
  const { progress, dropped } = read;
  return { ok: true, progress, total: progress.answers.length, fresh: newAnswers(have, progress), dropped };
}

/** Loading again must not keep the same spoilt contents twice. */
function distinct(values: readonly unknown[]): readonly unknown[] {
  return [...new Map(values.map((value) => [JSON.stringify(value), value])).values()];
}

/**
 * Keeps progress in the first place that works and reads from all of them, because an earlier visit may have
 * had to use another one. When a place fails, the next one is used; the last is memory and never fails.
 */
export function openStore(places: readonly Place[]): Store {
  let stored: Stored = noProgress;
  let kind: Place['kind'] = 'memory';
  let newer = false;

  const take = (found: unknown, added: Progress = noProgress): Stored | undefined => {
    const next = addToStored(found, added);
    if (next.ok) return next.stored;
    newer = true;
    return undefined;
  };
  const kept = (): Kept => ({
    progress: { schema: progressSchema, answers: stored.answers },
    kind,
    newer,
    setAside: stored.aside?.length ?? 0,
  });

  const load = async () => {
    let isFirst = true;
    for (const place of places) {
      try {
        const found = await place.read();
        if (isFirst) kind = place.kind;
        isFirst = false;
        if (found === undefined || found === null) continue;
        const here = take(found);
        if (!here) continue;
        const aside = distinct([...(stored.aside ?? []), ...(here.aside ?? [])]);
        const both = take(stored, here) ?? stored;
        stored = { schema: progressSchema, answers: both.answers, ...(aside.length > 0 ? { aside } : {}) };
      } catch {
        // This place is denied or broken: the next one answers.
      }
    }
    return kept();
  };

  const merge = async (progress: Progress) => {
    stored = take(stored, progress) ?? stored;
    if (newer) return kept();
    for (const place of places) {
      try {
        await place.update((found) => take(found, progress) ?? found);
        kind = place.kind;
        break;
      } catch {
        // Full or denied: the next place takes it. What this place held is still there.
      }
    }
    return kept();
  };

  return {
    load,
    merge,
    add: (answered) => merge({ schema: progressSchema, answers: [answered] }),
    copy: () => Promise.resolve(JSON.stringify(stored, undefined, 1)),
  };
}
