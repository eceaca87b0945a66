import { expect, test } from 'vitest';
import { impatient } from '#components/practice/places.ts';
import { openStore, readCopy, type Place } from '#components/practice/store.ts';
import type { Answered, Progress } from '#lib/practice/progress.ts';

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
const progressOf = (...atMs: readonly number[]): Progress => ({ schema: 2, answers: atMs.map(answered) });
const times = (progress: Progress) => progress.answers.map(({ atMs }) => atMs);

type Box = { value: unknown; full?: boolean; denied?: boolean };
function place(kind: Place['kind'], box: Box): Place {
  return {
    kind,
    read: async () => {
      if (box.denied) throw new Error('denied');
      return structuredClone(box.value);
    },
    update: async (change) => {
      if (box.denied || box.full) throw new Error('full');
      box.value = structuredClone(change(structuredClone(box.value)));
    },
  };
}
function boxes(
  indexed: Box = { value: undefined },
  local: Box = { value: undefined },
  memory: Box = { value: undefined },
) {
  const open = () =>
    openStore([place('indexeddb', indexed), place('localstorage', local), place('memory', memory)]);
  return { indexed, local, memory, open };
}

test('[hand] an answer is kept and there after a restart', async () => {
  const { open } = boxes();
  const first = await open().add(answered(1));
  expect(first.kind).toBe('indexeddb');
  expect(times((await open().load()).progress)).toEqual([1]);
});

test('[hand] two tabs that opened together both keep their answers', async () => {
  const { open } = boxes();
  const [one, two] = [open(), open()];
  await Promise.all([one.load(), two.load()]);
  await one.add(answered(1));
  await two.add(answered(2));
  await one.add(answered(3));
  expect(times((await open().load()).progress)).toEqual([1, 2, 3]);
});

test('[hand] a full first place: the next one takes the answer, and both are read afterwards', async () => {
  const { indexed, local, open } = boxes({ value: progressOf(1) });
  const store = open();
  await store.load();
  indexed.full = true;
  expect((await store.add(answered(2))).kind).toBe('localstorage');
  expect(indexed.value).toEqual(progressOf(1));
  expect(local.value).toEqual(progressOf(2));
  indexed.full = false;
  expect(times((await open().load()).progress)).toEqual([1, 2]);
});

test('[hand] a first place that never answers: the next one takes the answer, and waits once only', async () => {
  let asked = 0;
  const never = () => {
    asked++;
    return new Promise<never>(() => {});
  };
  const local: Box = { value: progressOf(1) };
  const store = openStore([
    impatient({ kind: 'indexeddb', read: never, update: never }, 20),
    place('localstorage', local),
  ]);
  expect(times((await store.load()).progress)).toEqual([1]);
  expect((await store.add(answered(2))).kind).toBe('localstorage');
  expect(local.value).toEqual(progressOf(1, 2));
  expect(asked).toBe(1);
});

test('[hand] everything denied: memory, and it says so', async () => {
  const { open } = boxes({ value: undefined, denied: true }, { value: undefined, denied: true });
  const store = open();
  expect((await store.load()).kind).toBe('memory');
  const kept = await store.add(answered(1));
  expect(kept.kind).toBe('memory');
  expect(times(kept.progress)).toEqual([1]);
});

test('[hand] newer data is never written over, in any place', async () => {
  const newer = { schema: 3, answers: { other: 'shape' } };
  const { indexed, local, open } = boxes({ value: newer });
  const store = open();
  expect((await store.load()).newer).toBe(true);
  const kept = await store.add(answered(1));
  expect(kept.newer).toBe(true);
  expect(times(kept.progress)).toEqual([1]);
  expect(indexed.value).toEqual(newer);
  expect(local.value).toBeUndefined();
});

test('[hand] a newer tab may upgrade between load and save: its data still stays', async () => {
  const { indexed, open } = boxes({ value: progressOf(1) });
  const store = open();
  await store.load();
  indexed.value = { schema: 3, answers: [] };
  expect((await store.add(answered(2))).newer).toBe(true);
  expect(indexed.value).toEqual({ schema: 3, answers: [] });
});

test('[hand] half-written data: the good answers count, the rest is set aside once and goes into the copy', async () => {
  const { open } = boxes({ value: { schema: 1, answers: [answered(1), { skill: 'ti' }] } });
  const store = open();
  await store.load();
  await store.load();
  const kept = await store.add(answered(2));
  expect(times(kept.progress)).toEqual([1, 2]);
  expect(kept.setAside).toBe(1);
  const again = await open().load();
  expect(again.setAside).toBe(1);
  expect(await store.copy()).toContain('"ti"');
});

test('[hand] text that was never JSON is set aside, not deleted', async () => {
  const { indexed, open } = boxes({ value: 'half a {"schema":1,' });
  await open().add(answered(1));
  expect(JSON.stringify(indexed.value)).toContain('half a');
});

test('[hand] a copy comes back: preview first, then the union', async () => {
  const from = boxes({ value: progressOf(1, 2) });
  const source = from.open();
  await source.load();
  const text = await source.copy();
  const to = boxes({ value: progressOf(2, 3) });
  const target = to.open();
  const have = (await target.load()).progress;
  const copy = readCopy(text, have);
  expect(copy).toMatchObject({ ok: true, total: 2, fresh: 1, dropped: 0 });
  if (copy.ok) expect(times((await target.merge(copy.progress)).progress)).toEqual([1, 2, 3]);
});

test('[hand] files that are no copy', () => {
  const have = progressOf();
  expect(readCopy('', have)).toEqual({ ok: false, reason: 'not-a-copy' });
  expect(readCopy('[1,2]', have)).toEqual({ ok: false, reason: 'not-a-copy' });
  expect(readCopy('{"schema":3,"answers":[]}', have)).toEqual({ ok: false, reason: 'newer-schema' });
  expect(readCopy(' '.repeat(8_000_001), have)).toEqual({ ok: false, reason: 'too-large' });
});

test('[hand] a place that refuses at once ends its wait: no promise is left to fail with nobody listening', async () => {
  const refuse = () => {
    throw new Error('denied');
  };
  const place = impatient({ kind: 'indexeddb', read: refuse, update: refuse }, 5);
  const left: unknown[] = [];
  const note = (reason: unknown) => void left.push(reason);
  process.on('unhandledRejection', note);
  await expect(place.read()).rejects.toThrow('denied');
  await new Promise((done) => setTimeout(done, 30));
  process.off('unhandledRejection', note);
  expect(left).toEqual([]);
});
