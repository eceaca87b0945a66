import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boneOverEdgeMm, offBone } from '#lib/mapping/under/offBone.ts';
import { lengthOfMm, sharedBy, sharedByAll, without } from '#lib/mapping/under/stretch.ts';
import { shareOf, underOutline, type UnderReading } from '#lib/mapping/under/underOutline.ts';
import { real } from '#tests/tools/real.ts';

const at = (fromMm: number, toMm: number) => ({ fromMm, toMm });
const bone = { archMm: 25, lengthMm: 40, atArchMm: -2, atTailMm: 3 };
const reading: UnderReading = { bone, hair: at(2, 29), thinFromMm: 22 };

function read(given: UnderReading) {
  const result = underOutline(given);
  if (!result.ok) throw new Error(result.reason);
  return result.under;
}

test('[hand] parts: shared, taken away, length', () => {
  expect(sharedBy(at(0, 10), at(4, 20))).toEqual([at(4, 10)]);
  expect(sharedBy(at(0, 10), at(10, 20))).toEqual([]);
  expect(sharedBy(at(5, 6), at(0, 10))).toEqual([at(5, 6)]);
  expect(without(at(0, 10), at(3, 4))).toEqual([at(0, 3), at(4, 10)]);
  expect(without(at(0, 10), at(-5, 4))).toEqual([at(4, 10)]);
  expect(without(at(0, 10), at(4, 12))).toEqual([at(0, 4)]);
  expect(without(at(0, 10), at(-1, 11))).toEqual([]);
  expect(without(at(0, 10), at(20, 30))).toEqual([at(0, 10)]);
  expect(without(at(0, 10), at(-30, -20))).toEqual([at(0, 10)]);
  expect(lengthOfMm([at(0, 2), at(5, 9.5)])).toBe(6.5);
  expect(lengthOfMm([])).toBe(0);
  expect(sharedByAll([at(0, 5), at(8, 12)], [at(4, 9)])).toEqual([at(4, 5), at(8, 9)]);
});

test('[hand] the bone’s edge: level up to the arch, then straight to the tail; crossed at 25 + 15 × 2/5 = 31', () => {
  expect([0, 25, 31, 40].map((mm) => boneOverEdgeMm(bone, mm))).toEqual([-2, -2, 0, 3]);
  expect(offBone(bone)).toEqual([at(31, 40)]);
  expect(offBone({ ...bone, atArchMm: 2, atTailMm: -3 })).toEqual([at(0, 31)]);
  expect(offBone({ ...bone, atArchMm: -2, atTailMm: -0.1 })).toEqual([]);
  expect(offBone({ ...bone, atArchMm: 1, atTailMm: 1 })).toEqual([at(0, 40)]);
  expect(offBone({ ...bone, atArchMm: 0, atTailMm: 0 })).toEqual([]);
  // Exactly on the edge at the arch counts as on the bone there.
  expect(offBone({ ...bone, atArchMm: 0, atTailMm: 3 })).toEqual([at(25, 40)]);
  expect(offBone({ ...bone, atArchMm: 3, atTailMm: 0 })).toEqual([at(0, 40)]);
});

test('[hand] one brow: hair 2 to 29, thin from 22, bone left at 31, length 40', () => {
  const under = read(reading);
  expect(under).toEqual({
    lengthMm: 40,
    hair: [at(2, 29)],
    thin: [at(22, 29)],
    bareFront: [at(0, 2)],
    bareTail: [at(29, 40)],
    offBone: [at(31, 40)],
    nothing: [at(31, 40)],
  });
  expect(shareOf(under, under.hair)).toBe(27 / 40);
  expect(shareOf(under, under.nothing)).toBe(9 / 40);
});

test('[hand] hair beyond the outline, hair nowhere under it, and hair that reaches the end', () => {
  expect(read({ ...reading, hair: at(-4, 60) })).toMatchObject({
    hair: [at(0, 40)],
    thin: [at(22, 40)],
    bareFront: [],
    bareTail: [],
    nothing: [],
  });
  expect(read({ ...reading, hair: at(-9, -1) })).toMatchObject({
    hair: [],
    thin: [],
    bareFront: [],
    bareTail: [at(0, 40)],
    nothing: [at(31, 40)],
  });
  expect(read({ ...reading, hair: at(41, 50) })).toMatchObject({
    hair: [],
    bareFront: [at(0, 40)],
    bareTail: [],
  });
  expect(read({ ...reading, hair: at(35, 40) })).toMatchObject({
    thin: [at(35, 40)],
    bareFront: [at(0, 35)],
    bareTail: [],
    nothing: [at(31, 35)],
  });
  expect(read({ ...reading, thinFromMm: 29 }).thin).toEqual([]);
  expect(read({ ...reading, bone: { ...bone, atArchMm: 1 } }).nothing).toEqual([at(0, 2), at(29, 40)]);
});

test('[hand] refused: hair that ends before it begins, an arch outside the outline', () => {
  expect(underOutline({ ...reading, hair: at(5, 5) })).toEqual({
    ok: false,
    reason: 'hair-ends-before-it-begins',
  });
  expect(underOutline({ ...reading, hair: at(6, 5) })).toEqual({
    ok: false,
    reason: 'hair-ends-before-it-begins',
  });
  for (const archMm of [0, 40, 41, -1])
    expect(underOutline({ ...reading, bone: { ...bone, archMm } })).toEqual({
      ok: false,
      reason: 'arch-outside-outline',
    });
});

test('[property] hair and bare skin make the whole; nothing is bare and off the bone, point by point', () => {
  fc.assert(
    fc.property(
      real(-10, 45),
      real(0.5, 50),
      real(0, 50),
      real(-4, 4),
      real(-4, 4),
      real(0.01, 39.99),
      (from, length, thinFromMm, atArchMm, atTailMm, placeMm) => {
        const given = { bone: { ...bone, atArchMm, atTailMm }, hair: at(from, from + length), thinFromMm };
        const { hair, thin, bareFront, bareTail, offBone: off, nothing } = read(given);
        expect(lengthOfMm(hair) + lengthOfMm(bareFront) + lengthOfMm(bareTail)).toBeCloseTo(40, 9);
        expect(lengthOfMm(thin)).toBeLessThanOrEqual(lengthOfMm(hair) + 1e-9);
        const isIn = (parts: typeof hair) =>
          parts.some(({ fromMm, toMm }) => placeMm > fromMm && placeMm < toMm);
        const overMm = boneOverEdgeMm(given.bone, placeMm);
        if (Math.abs(overMm) > 1e-9) expect(isIn(off)).toBe(overMm > 0);
        if (Math.abs(placeMm - from) > 1e-9 && Math.abs(placeMm - from - length) > 1e-9)
          expect(isIn(hair)).toBe(placeMm > from && placeMm < from + length);
        expect(isIn(nothing)).toBe((isIn(bareFront) || isIn(bareTail)) && isIn(off));
      },
    ),
  );
});
