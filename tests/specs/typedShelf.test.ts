import { afterEach, beforeEach, expect, test, vi } from 'vitest';

let texts: Map<string, string>;
let listeners: Map<string, () => void>;
const day = new Date(2026, 2, 1, 23, 50);

beforeEach(() => {
  texts = new Map();
  listeners = new Map();
  vi.useFakeTimers({ now: day });
  vi.resetModules();
  const listen = (name: string, run: () => void) => void listeners.set(name, run);
  vi.stubGlobal('addEventListener', listen);
  vi.stubGlobal('document', { addEventListener: listen });
  vi.stubGlobal('location', { pathname: '/calculators/pose/' });
  // Keys of a browser's storage are its own properties, as Object.keys reads them.
  const methods = {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
    removeItem: (key: string) => void texts.delete(key),
  };
  vi.stubGlobal(
    'localStorage',
    new Proxy(methods, {
      ownKeys: () => [...texts.keys()],
      getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }),
    }),
  );
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
const open = () => import('#components/site/typedShelf.ts');
const entry = { version: 2, typed: { w: '4' } };

test('[hand] what was typed is written after a pause, at once when the page is left, and read again on the same day', async () => {
  const shelf = await open();
  shelf.keepTyped('calculator pose', entry);
  expect(texts.size).toBe(0);
  vi.advanceTimersByTime(1000);
  expect([...texts]).toEqual([
    ['tautline-typed /calculators/pose/ calculator pose', JSON.stringify({ day: '2026-03-01', ...entry })],
  ]);
  expect(shelf.typedHere('calculator pose')).toMatchObject(entry);
  expect(shelf.typedHere('calculator other')).toBeUndefined();
  shelf.keepTyped('calculator pose', { version: 2, typed: 'later' });
  listeners.get('pagehide')?.();
  expect(shelf.typedHere('calculator pose')?.typed).toBe('later');
  shelf.keepTyped('calculator pose', undefined);
  listeners.get('visibilitychange')?.();
  expect(texts.size).toBe(0);
});

test('[hand] on the next civil day of the device all of it is gone, and so is what cannot be read; other keys stay', async () => {
  const first = await open();
  first.keepTyped('calculator pose', entry);
  vi.advanceTimersByTime(1000);
  texts.set('tautline-typed /x/ spoilt', '{{{');
  texts.set('tautline-bottles', 'kept');
  vi.advanceTimersByTime(15 * 60_000);
  expect(first.typedHere('calculator pose'), 'a page that stayed open').toBeUndefined();
  expect([...texts.keys()]).toEqual(['tautline-bottles']);
  texts.set('tautline-typed /x/ a', JSON.stringify({ day: '2026-03-01', ...entry }));
  vi.resetModules();
  await open();
  expect([...texts.keys()]).toEqual(['tautline-bottles']);
});

test('[hand] where storage is denied or full nothing is kept and nothing is thrown', async () => {
  const refuse = () => {
    throw new Error('SecurityError');
  };
  vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, removeItem: refuse });
  const shelf = await open();
  shelf.keepTyped('calculator pose', entry);
  vi.advanceTimersByTime(1000);
  expect(shelf.typedHere('calculator pose')).toBeUndefined();
});
