import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hueLean, leanOf } from '#lib/colour/reading/hueLean.ts';
import { boxAround, hueSpan, itaSpan } from '#lib/colour/reading/labBox.ts';
import { readingValues } from '#lib/colour/numbers/reading.ts';
import { boxOfReadings, classesBetween, readSkin } from '#lib/colour/reading/skinReading.ts';
import { skinPlausibility } from '#lib/colour/reading/skinPlausibility.ts';
import { ita } from '#lib/colour/spaces/ita.ts';
import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { real } from '../../../tools/real.ts';

const violinist = { l: 62, a: 10, b: 17 };

test('[hand] one reading stands alone: two units each way; three: from lowest to highest, half a unit more', () => {
  expect(boxOfReadings([violinist], 'untouched')).toEqual({
    l: { value: 62, lo: 60, hi: 64 },
    a: { value: 10, lo: 8, hi: 12 },
    b: { value: 17, lo: 15, hi: 19 },
  });
  const three = boxOfReadings([violinist, { l: 63, a: 9, b: 18 }, { l: 61, a: 11, b: 16 }], 'untouched');
  expect(three).toEqual({
    l: { value: 62, lo: 60.5, hi: 63.5 },
    a: { value: 10, lo: 8.5, hi: 11.5 },
    b: { value: 17, lo: 15.5, hi: 18.5 },
  });
  expect(boxOfReadings([], 'untouched')).toBeUndefined();
});

test('[hand] touched skin, and skin nobody knows about, widen every number, redness most', () => {
  const calm = boxOfReadings([violinist], 'untouched');
  for (const touch of ['touched', 'not-known'] as const) {
    const wide = boxOfReadings([violinist], touch);
    if (!calm || !wide) throw new Error('one reading makes a box');
    expect([calm.l.lo - wide.l.lo, calm.a.lo - wide.a.lo, calm.b.lo - wide.b.lo]).toEqual([
      readingValues.touchedL,
      readingValues.touchedA,
      readingValues.touchedB,
    ]);
    expect([wide.l.hi - calm.l.hi, wide.a.hi - calm.a.hi, wide.b.hi - calm.b.hi]).toEqual([2, 4, 1]);
  }
});

test('[hand] the violinist: arctan(12/17) = 35.2°, arctan(17/10) = 59.5°, and the corners of her box', () => {
  const reading = readSkin([violinist], 'untouched');
  if (!reading.ok) throw new Error(reading.reason);
  expect(reading.ita.value).toBeCloseTo(35.2176, 4);
  expect(reading.ita.lo).toBeCloseTo(27.7585, 4); // arctan(10/19)
  expect(reading.ita.hi).toBeCloseTo(43.0251, 4); // arctan(14/15)
  expect(reading.hue.value).toBeCloseTo(59.5345, 4);
  expect(reading.hue.lo).toBeCloseTo(51.3402, 4); // arctan(15/12)
  expect(reading.hue.hi).toBeCloseTo(67.1663, 4); // arctan(19/8)
  expect(reading.itaClass).toBe('intermediate');
  expect(reading.classes).toEqual(['light', 'intermediate', 'tan']);
  expect(reading.lean).toBe('not-shown');
});

test('[hand] deep skin: the angle is below zero, and more yellow brings it nearer to zero', () => {
  const reading = readSkin([{ l: 36, a: 11, b: 15 }], 'untouched');
  if (!reading.ok) throw new Error(reading.reason);
  expect(reading.ita.value).toBeCloseTo(-43.0251, 4);
  expect(reading.ita.lo).toBeCloseTo((Math.atan(-16 / 13) * 180) / Math.PI, 9);
  expect(reading.ita.hi).toBeCloseTo((Math.atan(-12 / 17) * 180) / Math.PI, 9);
  expect(reading.itaClass).toBe('dark');
  expect(reading.classes).toEqual(['dark']);
});

test('[hand] no yellow left in the box, no angle; no reading, no answer', () => {
  expect(readSkin([{ l: 60, a: 10, b: 2 }], 'untouched')).toEqual({ ok: false, reason: 'outside-the-scale' });
  expect(readSkin([{ l: 60, a: 10, b: 2.01 }], 'untouched').ok).toBe(true);
  expect(readSkin([], 'untouched')).toEqual({ ok: false, reason: 'no-reading' });
  expect(itaSpan(boxAround(violinist, { l: 1, a: 1, b: 17 }))).toEqual({
    ok: false,
    reason: 'outside-the-scale',
  });
  expect(hueSpan(boxAround(violinist, { l: 1, a: 1, b: 17 }))).toEqual({
    ok: false,
    reason: 'outside-the-scale',
  });
});

test('[hand] classes of an interval: ends on an edge belong to the darker class', () => {
  expect(classesBetween(41, 55)).toEqual(['light', 'intermediate']);
  expect(classesBetween(41.01, 55.01)).toEqual(['very-light', 'light']);
  expect(classesBetween(-40, 60)).toEqual(['very-light', 'light', 'intermediate', 'tan', 'brown', 'dark']);
  expect(classesBetween(-31, -30)).toEqual(['dark']);
  expect(classesBetween(9, 11)).toEqual(['tan', 'brown']);
});

test('[hand] leans: red below 55, yellow from 65, not shown over a limit', () => {
  expect([54.99, 55, 64.99, 65].map(leanOf)).toEqual(['red', 'between', 'between', 'yellow']);
  expect(hueLean({ lo: 40, hi: 54 })).toBe('red');
  expect(hueLean({ lo: 54, hi: 56 })).toBe('not-shown');
  expect(hueLean({ lo: 56, hi: 64 })).toBe('between');
  expect(hueLean({ lo: 66, hi: 80 })).toBe('yellow');
});

test('[property] every colour inside the box has both angles inside their intervals', () => {
  fc.assert(
    fc.property(
      real(30, 80),
      real(2, 20),
      real(6, 28),
      real(0.1, 4),
      real(0, 1),
      real(0, 1),
      real(0, 1),
      (l, a, b, half, i, j, k) => {
        const box = boxAround({ l, a, b }, { l: half, a: half, b: half });
        const [angle, hue] = [itaSpan(box), hueSpan(box)];
        const at = (span: { lo: number; hi: number }, share: number) => span.lo + share * (span.hi - span.lo);
        const inside = { l: at(box.l, i), a: at(box.a, j), b: at(box.b, k) };
        const one = ita(inside);
        if (!angle.ok || !hue.ok || !one.ok) return false;
        const h = hueDeg(inside.a, inside.b);
        return (
          one.deg >= angle.span.lo - 1e-9 &&
          one.deg <= angle.span.hi + 1e-9 &&
          h >= hue.span.lo - 1e-9 &&
          h <= hue.span.hi + 1e-9
        );
      },
    ),
  );
});

test('[table] the mean of 600 people is like the measured skins; deep skin lies outside them; sky blue is no skin', () => {
  expect(skinPlausibility({ l: 61.7462, a: 9.5618, b: 17.0778 })).toBe('like-the-measured');
  expect(skinPlausibility({ l: 36, a: 11, b: 15 })).toBe('outside-the-measured');
  expect(skinPlausibility({ l: 60, a: -60, b: -60 })).toBe('no-skin-like-it');
});
