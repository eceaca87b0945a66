import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { askLatest } from '#components/calculator/workers/askLatest.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Somebody who answers when told to. */
function slowly() {
  const asked: number[] = [];
  const answers: ((isRight: boolean) => void)[] = [];
  const ask = (state: number) => {
    asked.push(state);
    return new Promise<string>((resolve, reject) =>
      answers.push((isRight) => (isRight ? resolve(`of ${state}`) : reject(new Error('gone')))),
    );
  };
  const tell = async (isRight = true) => {
    answers.shift()?.(isRight);
    await vi.advanceTimersByTimeAsync(0);
  };
  return { asked, tell, latest: askLatest(ask, 100) };
}

test('[hand] nothing is asked until 100 ms have passed without a newer question', async () => {
  const { asked, tell, latest } = slowly();
  const answers = [1, 2, 3].map((state) => {
    vi.advanceTimersByTime(99);
    return latest(state);
  });
  expect(asked).toEqual([]);
  expect(await Promise.all(answers.slice(0, 2))).toEqual([undefined, undefined]);
  vi.advanceTimersByTime(99);
  expect(asked).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(asked).toEqual([3]);
  await tell();
  expect(await answers[2]).toBe('of 3');
});

test('[hand] one question is out at a time: what comes meanwhile waits for its answer and for its own 100 ms', async () => {
  const { asked, tell, latest } = slowly();
  const first = latest(1);
  vi.advanceTimersByTime(100);
  const [second, third] = [latest(2), latest(3)];
  vi.advanceTimersByTime(100);
  expect(asked).toEqual([1]);
  expect(await second).toBeUndefined();
  await tell();
  expect(asked).toEqual([1, 3]);
  const fourth = latest(4);
  await tell();
  expect(asked).toEqual([1, 3]);
  vi.advanceTimersByTime(100);
  expect(asked).toEqual([1, 3, 4]);
  await tell();
  expect(await Promise.all([first, third, fourth])).toEqual(['of 1', 'of 3', 'of 4']);
});

test('[hand] a question that fails is rejected, and the one that waits is asked all the same', async () => {
  const { asked, tell, latest } = slowly();
  const failed = latest(1).catch((reason: unknown) => String(reason));
  vi.advanceTimersByTime(100);
  const second = latest(2);
  vi.advanceTimersByTime(100);
  await tell(false);
  expect(await failed).toBe('Error: gone');
  expect(asked).toEqual([1, 2]);
  await tell();
  expect(await second).toBe('of 2');
});
