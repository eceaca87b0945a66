import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fakedHeightMm } from '#lib/mapping/level/fakedHeight.ts';
import { tiltBehind } from '#lib/mapping/level/tiltBehind.ts';
import { real } from '#tests/tools/real.ts';

/** Printed to five decimals in a table of sines. */
const sines = [
  [1, 0.01745],
  [2, 0.0349],
  [3, 0.05234],
  [5, 0.08716],
  [10, 0.17365],
  [30, 0.5],
] as const;

test.each(sines)('[table] a tilt of %d° over 1 mm makes %d mm, either way, and back', (tiltDeg, sine) => {
  expect(fakedHeightMm(1, tiltDeg)).toBeCloseTo(sine, 5);
  expect(fakedHeightMm(1, -tiltDeg)).toBeCloseTo(-sine, 5);
  const back = tiltBehind(sine, 1);
  expect(back.ok && back.tiltDeg).toBeCloseTo(tiltDeg, 2);
});

test('[hand] the lesson’s numbers: 82 × 0.01745 = 1.43, 82 × 0.0349 = 2.86', () => {
  expect(fakedHeightMm(82, 1)).toBeCloseTo(1.431, 3);
  expect(fakedHeightMm(82, 2)).toBeCloseTo(2.862, 3);
});

test('[hand] a quarter turn makes the whole span; more than the span has no tilt behind it', () => {
  expect(fakedHeightMm(40, 90)).toBeCloseTo(40, 12);
  expect(tiltBehind(40, 40)).toEqual({ ok: true, tiltDeg: 90 });
  expect(tiltBehind(-40, 40)).toEqual({ ok: true, tiltDeg: -90 });
  expect(tiltBehind(0, 40)).toEqual({ ok: true, tiltDeg: 0 });
  const none = { ok: false, reason: 'higher-than-the-span' };
  expect(tiltBehind(40.001, 40)).toEqual(none);
  expect(tiltBehind(-40.001, 40)).toEqual(none);
  expect(tiltBehind(0, 0)).toEqual(none);
  expect(tiltBehind(Number.NaN, 40)).toEqual(none);
});

test('[property] the tilt behind a faked height is the tilt that faked it', () => {
  fc.assert(
    fc.property(real(5, 200), real(-80, 80), (spanMm, tiltDeg) => {
      const back = tiltBehind(fakedHeightMm(spanMm, tiltDeg), spanMm);
      return back.ok && Math.abs(back.tiltDeg - tiltDeg) < 1e-9;
    }),
  );
});

test('[property] two points turned about any place in between differ in height by the same amount', () => {
  fc.assert(
    fc.property(real(10, 150), real(-20, 20), real(0, 1), (spanMm, tiltDeg, share) => {
      const turn = (x: number) => x * Math.sin((tiltDeg / 180) * Math.PI);
      return (
        Math.abs(turn(share * spanMm) - turn((share - 1) * spanMm) - fakedHeightMm(spanMm, tiltDeg)) < 1e-9
      );
    }),
  );
});
