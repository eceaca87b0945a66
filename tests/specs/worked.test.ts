import { expect, test } from 'vitest';
import { workedExamples } from '#worked/index.ts';
import { type WorkedId, workedWords } from '#words/worked/index.ts';

test('[hand] every worked example has words and every text an example', () => {
  expect(Object.keys(workedExamples).sort()).toEqual(Object.keys(workedWords).sort());
});

test('[hand] steps hold no gaps, and the answer line holds the answer', () => {
  for (const [id, { numbers }] of Object.entries(workedExamples)) {
    const name = Object.keys(workedWords).find((known): known is WorkedId => known === id);
    if (!name) throw new Error(`src/words/worked/ has no sentences for "${id}".`);
    const { title, steps, answer, after } = workedWords[name](numbers);
    for (const text of [title, ...steps, answer, after]) expect(text).not.toMatch(/NaN|undefined/);
    expect(answer).toContain(numbers.answer.toFixed(1));
  }
});

test('[hand] pair middles by hand: (41.4 + 73.6) / 2, (26.3 + 88.9) / 2, (12.1 + 102.9) / 2, mean of the three', () => {
  const { numbers } = workedExamples['midline-by-pair-middles'];
  expect(numbers.innerMiddle).toBeCloseTo(57.5, 10);
  expect(numbers.pupilMiddle).toBeCloseTo(57.6, 10);
  expect(numbers.outerMiddle).toBeCloseTo(57.5, 10);
  expect(numbers.answer).toBeCloseTo((57.5 + 57.6 + 57.5) / 3, 10);
  expect(numbers.noseOff).toBeCloseTo((43.6 + 81) / 2 - (57.5 + 57.6 + 57.5) / 3, 10);
});

test('[hand] the leaning head: 82 × 0.0349 = 2.86, and 3.1 − 2.86 = 0.24 is under 0.75', () => {
  const { numbers } = workedExamples['leaning-head'];
  expect(numbers.sine).toBeCloseTo(0.0349, 4);
  expect(numbers.answer).toBeCloseTo(2.862, 3);
  expect(numbers.left).toBeCloseTo(0.238, 3);
  expect(numbers.real).toBeCloseTo(1.96 * Math.sqrt(2 * (0.09 / 3 + 0.206 ** 2)), 2);
});

test('[hand] the bell-ringer: 0.3/√3 = 0.173; √(0.173² + 0.206²) = 0.269; × √2 = 0.381; × 2.80 = 1.07', () => {
  const { numbers } = workedExamples['bell-ringer'];
  expect(numbers.mean).toBeCloseTo(0.1732, 4);
  expect(numbers.side).toBeCloseTo(0.2692, 3);
  expect(numbers.both).toBeCloseTo(0.3807, 3);
  expect(numbers.answer).toBeCloseTo(1.066, 2);
  expect(numbers.sidesMm).toBeLessThan(numbers.answer);
});

test('[table] one arch for both: front 14 and tail 57.25 give 40.73 from the front and 30.52 from the tail', () => {
  const { numbers } = workedExamples['one-arch-for-both'];
  expect([numbers.front, numbers.tail, numbers.length]).toEqual([14, 57.25, 43.25]);
  expect(numbers.answer).toBeCloseTo(40.73, 2);
  expect(numbers.fromTail).toBeCloseTo(30.52, 2);
  // 14.2 + 0.618034 × 43.3 and 13.8 + 0.618034 × 43.2
  expect(numbers.rightAlone).toBeCloseTo(40.961, 3);
  expect(numbers.leftAlone).toBeCloseTo(40.499, 3);
});

test('[hand] the baker: 21.2 − 19.6 = 1.6 is more than 2.2365 × 0.381 = 0.85, 18.6 − 18.2 = 0.4 is less', () => {
  const { numbers } = workedExamples['baker-talking'];
  expect(numbers.talking).toBeCloseTo(1.6, 10);
  expect(numbers.answer).toBeCloseTo(0.4, 10);
  expect(numbers.tools).toBeCloseTo(0.206, 3);
  expect(numbers.real).toBeCloseTo(2.2365 * Math.sqrt(2 * (0.03 + 0.2062 ** 2)), 3);
});

test('[hand] the baker: 33 − 31.5 = 1.5; √(2(0.09/5 + 0.0425)) = 0.348; × 2.57 = 0.89', () => {
  const { numbers } = workedExamples['baker-first-pass'];
  expect(numbers.answer).toBeCloseTo(1.5, 12);
  // The lower edge is on its line: filled, the arch is 33 − 27 = 6 mm, as approved.
  expect(numbers.lowerMm).toBe(numbers.lowerApprovedMm);
  expect(numbers.thick).toBeCloseTo(6, 12);
  expect(numbers.both).toBeCloseTo(0.348, 3);
  expect(numbers.factor).toBeCloseTo(2.569, 3);
  expect(numbers.real).toBeCloseTo(0.894, 2);
});

test('[hand] the potter: 27 + 15 × 1 ÷ 3 = 32 mm; 42 − 32 = 10 mm', () => {
  const { numbers } = workedExamples['nothing-under-the-tail'];
  expect(numbers.leaves).toBeCloseTo(32, 12);
  expect(numbers.from).toBeCloseTo(32, 12);
  expect(numbers.answer).toBeCloseTo(10, 12);
});

test('[hand] the ferry pilot: 20.5 + 1 = 21.5; 23.3 − 21.5 = 1.8; 2 × 1.645 × 0.3 = 0.987, 15.2 % of 6.5', () => {
  const { numbers } = workedExamples['ferry-pilot-old-shape'];
  expect(numbers.allowed).toBeCloseTo(21.5, 12);
  expect(numbers.answer).toBeCloseTo(1.8, 12);
  expect(numbers.grows).toBeCloseTo(0.987, 12);
  expect(numbers.share).toBeCloseTo(15.18, 2);
  expect(numbers.chased).toBeCloseTo(2.8 + 0.4935, 12);
});

test('[table] the smallest real difference for TEM 0.3, one reading, ten comparisons is 1.44 mm (k 2.80 × 0.51)', () => {
  expect(workedExamples['smallest-real-difference'].numbers.answer).toBeCloseTo(1.44, 2);
});

test('[hand] the violinist’s tail: 40.4 − 37.0; 11.4 − 10.2; line 47 + 8.6 × 26.8 / 39.6', () => {
  const { numbers } = workedExamples['violinist-tail'];
  expect(numbers.answer).toBeCloseTo(3.4, 9);
  expect(numbers.below).toBeCloseTo(1.2, 9);
  expect(numbers.slope).toBeCloseTo(26.8 / 39.6, 9);
  expect(numbers.limit).toBeCloseTo(47 + (8.6 * 26.8) / 39.6, 9);
  expect(numbers.past).toBeCloseTo(56 - 47 - (8.6 * 26.8) / 39.6, 9);
});

test('[hand] the ferry pilot: 2.5 sideways and 4.3 up, 1.4 and 4.8; straight up 5.7 against 5.2', () => {
  const { numbers } = workedExamples['pilot-thickness'];
  expect(numbers.answer).toBeCloseTo(Math.sqrt(2.5 ** 2 + 4.3 ** 2), 9);
  expect(numbers.left).toBeCloseTo(Math.sqrt(1.4 ** 2 + 4.8 ** 2), 9);
  expect(numbers.seeming).toBeCloseTo(0.5, 9);
});

test('[hand] a scale from the iris: 11.71 / 195 a dot, 25 dots and 750 dots, each uncertain by 2 × 0.42 / 11.71', () => {
  const { numbers } = workedExamples['scale-by-iris'];
  expect(numbers.answer).toBeCloseTo((25 * 11.71) / 195, 10);
  expect(numbers.lengthMm).toBeCloseTo((750 * 11.71) / 195, 10);
  expect(numbers.differenceDoubt).toBeCloseTo((25 * 0.84) / 195, 10);
  expect(numbers.lengthDoubt).toBeCloseTo((750 * 0.84) / 195, 10);
});
