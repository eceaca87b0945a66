import { expect, test } from 'vitest';
import { ita, itaClasses, itaEdgesDeg, lightnessAtIta } from '#lib/colour/spaces/ita.ts';
import { labToLch } from '#lib/colour/spaces/lch.ts';

test('[table] at b* 15 the classes part at L* 71.4222, 63.0393, 57.9756, 52.6449 and 41.3397', () => {
  expect(itaEdgesDeg.map((deg) => Number(lightnessAtIta(deg, 15).toFixed(4)))).toEqual([
    71.4222, 63.0393, 57.9756, 52.6449, 41.3397,
  ]);
});

test('[hand] every class, and its edges: above an edge lighter, on it darker', () => {
  const classOf = (l: number) => {
    const reading = ita({ l, b: 15 });
    return reading.ok ? reading.itaClass : undefined;
  };
  expect([72, 65, 60, 55, 45, 38].map(classOf)).toEqual(itaClasses);
  // At b* 10 an angle of 45° is L* 60.
  expect(ita({ l: 60, b: 10 })).toEqual({ ok: true, deg: 45, itaClass: 'light' });
  expect(ita({ l: 50, b: 10 })).toEqual({ ok: true, deg: 0, itaClass: 'brown' });
});

test('[table] the mean of 600 faces: L* 61.7462, b* 17.0778 is 34.52°', () => {
  const reading = ita({ l: 61.7462, b: 17.0778 });
  expect(reading.ok && reading.deg).toBeCloseTo(34.52, 2);
});

test('[table] two measured people: 3° apart in this angle, 22° apart in hue', () => {
  const [one, other] = [
    { l: 62.82, a: 12.69, b: 10.91 },
    { l: 67.37, a: 8.71, b: 16.6 },
  ];
  const angle = (lab: typeof one) => {
    const reading = ita(lab);
    return reading.ok ? reading.deg : NaN;
  };
  expect(Math.abs(angle(one) - angle(other))).toBeLessThan(4);
  expect(labToLch(other).hDeg - labToLch(one).hDeg).toBeCloseTo(21.6, 1);
});

test('[hand] no yellow, no angle', () => {
  expect(ita({ l: 60, b: 0 })).toEqual({ ok: false, reason: 'outside-the-scale' });
  expect(ita({ l: 60, b: -3 })).toEqual({ ok: false, reason: 'outside-the-scale' });
  expect(ita({ l: 60, b: NaN })).toEqual({ ok: false, reason: 'outside-the-scale' });
});

test('[hand] what is not a number has no angle', () => {
  for (const lab of [
    { l: NaN, b: 5 },
    { l: 60, b: NaN },
    { l: Infinity, b: 5 },
    { l: 60, b: Infinity },
    { l: -Infinity, b: Infinity },
  ])
    expect(ita(lab)).toEqual({ ok: false, reason: 'outside-the-scale' });
});
