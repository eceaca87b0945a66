import { createStore, get, update } from 'idb-keyval';
import type { Place } from './store.ts';

const key = 'tautline-practice';
const patienceMs = 3000;

/**
 * A place that may fall silent: browsers have left a database request without any answer until they were
 * restarted. After the wait it counts as failed, at once from then on, and the next place answers. A late
 * write does no harm: what is kept is a union.
 */
export function impatient(place: Place, waitMs: number): Place {
  let isSilent = false;
  async function inTime<T>(ask: () => Promise<T>): Promise<T> {
    if (isSilent) throw new Error('This place did not answer before.');
    let timer: ReturnType<typeof setTimeout> | undefined;
    const end = new Promise<never>((_, reject) => {
      timer = setTimeout(() => {
        isSilent = true;
        reject(new Error('This place does not answer.'));
      }, waitMs);
    });
    // Where storage is denied, asking can throw at once: that must end the wait as well.
    const answer = new Promise<T>((resolve) => resolve(ask()));
    return Promise.race([answer, end]).finally(() => clearTimeout(timer));
  }
  return {
    kind: place.kind,
    read: () => inTime(place.read),
    update: (change) => inTime(() => place.update(change)),
  };
}

/**
 * IndexedDB. Its updates run one after the other across tabs. Merely asking for it can throw in a sandboxed
 * frame.
 */
function indexedPlace(): Place {
  const store = createStore(key, 'progress');
  return {
    kind: 'indexeddb',
    read: () => get<unknown>(key, store),
    update: (change) => update<unknown>(key, change, store),
  };
}

function localPlace(): Place {
  const read = (): unknown => {
    const text = localStorage.getItem(key);
    if (text === null) return undefined;
    try {
      return JSON.parse(text);
    } catch {
      return text;
    }
  };
  return {
    kind: 'localstorage',
    read: async () => read(),
    update: async (change) => localStorage.setItem(key, JSON.stringify(change(read()))),
  };
}

function memoryPlace(): Place {
  let value: unknown;
  return {
    kind: 'memory',
    read: async () => value,
    update: async (change) => {
      value = change(value);
    },
  };
}

/** The places of this browser, best first. One that cannot even be opened is left out. */
export function browserPlaces(): readonly Place[] {
  return [() => impatient(indexedPlace(), patienceMs), localPlace, memoryPlace].flatMap((open) => {
    try {
      return [open()];
    } catch {
      return [];
    }
  });
}
