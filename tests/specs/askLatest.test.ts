import { expect, test } from 'vitest';
import { askLatest } from '#components/calculator/workers/askLatest.ts';

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
    await new Promise((done) => setTimeout(done, 0));
  };
  return { asked, tell, latest: askLatest(ask) };
}

test('[hand] one question is out at a time; of five the first and the last are asked, the others come back empty', async () => {
  const { asked, tell, latest } = slowly();
  const answers = [1, 2, 3, 4, 5].map(latest);
  expect(asked).toEqual([1]);
  expect(await Promise.all(answers.slice(1, 4))).toEqual([undefined, undefined, undefined]);
  await tell();
  expect(asked).toEqual([1, 5]);
  await tell();
  expect([await answers[0], await answers[4]]).toEqual(['of 1', 'of 5']);
  const later = latest(6);
  expect(asked).toEqual([1, 5, 6]);
  await tell();
  expect(await later).toBe('of 6');
});

test('[hand] a question that fails is rejected, and the one that waits is asked all the same', async () => {
  const { asked, tell, latest } = slowly();
  const [first, second] = [latest(1), latest(2)];
  const failed = first.catch((reason: unknown) => String(reason));
  await tell(false);
  expect(await failed).toBe('Error: gone');
  expect(asked).toEqual([1, 2]);
  await tell();
  expect(await second).toBe('of 2');
});
