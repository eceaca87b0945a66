import { readProgress, type Answered } from '#lib/practice/progress.ts';
import { putDownKey, putDownPrefix } from './putDown.ts';
import type { Kept, Store } from './store.ts';

const isWritten = ({ kind, newer }: Kept): boolean => kind !== 'memory' && !newer;

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return undefined;
  }
}

/** Takes an answer away from where it was put down, once the store has written it. */
export function clearPutDown(answered: Answered, kept: Kept): void {
  try {
    if (isWritten(kept)) localStorage.removeItem(putDownKey(answered));
  } catch {
    // Then it stays: adding an answer twice counts once.
  }
}

/**
 * Moves into the store what an earlier page put down and could not write. What cannot be read stays where it
 * is.
 */
export async function takeUp(store: Store, before: Kept): Promise<Kept> {
  let kept = before;
  try {
    const keys = Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i)).filter((key) =>
      key?.startsWith(putDownPrefix),
    );
    for (const key of keys) {
      const read = key ? readProgress(parsed(localStorage.getItem(key))) : undefined;
      if (!key || !read?.ok || read.dropped > 0) continue;
      kept = await store.merge(read.progress);
      if (isWritten(kept)) localStorage.removeItem(key);
    }
  } catch {
    // Storage is denied: nothing was put down either.
  }
  return kept;
}
