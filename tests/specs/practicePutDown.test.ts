import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { putDown } from '#components/practice/putDown.ts';
import { openStore, type Place, type Store } from '#components/practice/store.ts';
import { clearPutDown, takeUp } from '#components/practice/takeUp.ts';
import type { Answered } from '#lib/practice/progress.ts';

const answered = (atMs: number): Answered => ({
  skill: 'tilt',
  version: 1,
  seed: 4,
  day: '2026-03-01',
  atMs,
  rung: 'bare',
  credit: 1,
  tries: 1,
  hints: 0,
  solved: true,
});

/** One place whose contents outlive a store, as a browser's do. */
function placeWith(kind: Place['kind'], box: { value: unknown }): Place {
  return {
    kind,
    read: async () => box.value,
    update: async (change) => {
      box.value = change(box.value);
    },
  };
}
const opened = async (store: Store) => takeUp(store, await store.load());

let texts: Map<string, string>;
beforeEach(() => {
  texts = new Map();
  vi.stubGlobal('localStorage', {
    get length() {
      return texts.size;
    },
    key: (i: number) => [...texts.keys()][i] ?? null,
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
    removeItem: (key: string) => void texts.delete(key),
  });
});
afterEach(() => vi.unstubAllGlobals());

test('[hand] a page that is left before its store could write: the next one finds the answers, in order, and clears up', async () => {
  const box = { value: undefined };
  putDown(answered(2));
  putDown(answered(1));
  const kept = await opened(openStore([placeWith('indexeddb', box)]));
  expect(kept.progress.answers).toEqual([answered(1), answered(2)]);
  expect(box.value).toEqual({ schema: 2, answers: [answered(1), answered(2)] });
  expect(texts.size).toBe(0);
});

test('[hand] an answer that was written in time counts once, and only its own text goes', async () => {
  const store = openStore([placeWith('indexeddb', { value: undefined })]);
  putDown(answered(1));
  putDown(answered(2));
  clearPutDown(answered(1), await store.add(answered(1)));
  expect(texts.size).toBe(1);
  expect((await opened(store)).progress.answers).toEqual([answered(1), answered(2)]);
});

test('[hand] what the store did not write stays down: memory alone, or data of a newer version', async () => {
  putDown(answered(1));
  for (const place of [
    placeWith('memory', { value: undefined }),
    placeWith('indexeddb', { value: { schema: 3 } }),
  ]) {
    const store = openStore([place]);
    expect((await opened(store)).progress.answers).toEqual([answered(1)]);
    clearPutDown(answered(1), await store.add(answered(1)));
    expect(texts.size).toBe(1);
  }
});

test('[hand] texts that cannot be read, and those of others, stay as they are', async () => {
  const strange = {
    'tautline-put-down 1': '{"schema":1,',
    'tautline-put-down 2': '{"schema":3,"answers":[]}',
    'tautline-put-down 3': '{"schema":1,"answers":[{"skill":"<b>"}]}',
    theme: 'dark',
  };
  for (const [key, text] of Object.entries(strange)) texts.set(key, text);
  putDown(answered(1));
  expect((await opened(openStore([placeWith('indexeddb', { value: undefined })]))).progress.answers).toEqual([
    answered(1),
  ]);
  expect(Object.fromEntries(texts)).toEqual(strange);
});

test('[hand] where the browser keeps nothing, nothing is thrown', async () => {
  const deny = () => {
    throw new Error('denied');
  };
  vi.stubGlobal('localStorage', {
    get length() {
      return deny();
    },
    setItem: deny,
    removeItem: deny,
    key: deny,
    getItem: deny,
  });
  const store = openStore([placeWith('indexeddb', { value: undefined })]);
  putDown(answered(1));
  clearPutDown(answered(1), await store.add(answered(1)));
  expect((await opened(store)).progress.answers).toEqual([answered(1)]);
});
