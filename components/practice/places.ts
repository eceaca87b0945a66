import { createStore, get, update } from 'idb-keyval';
import type { Place } from './store.ts';

const key = 'tautline-practice';

/** IndexedDB. Its updates run one after the other across tabs. Merely asking for it can throw in a sandboxed frame. */
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
  return [indexedPlace, localPlace, memoryPlace].flatMap((open) => {
    try {
      return [open()];
    } catch {
      return [];
    }
  });
}
