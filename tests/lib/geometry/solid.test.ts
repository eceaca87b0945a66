import fc from 'fast-check';
import { vec3 } from 'gl-matrix';
import { expect, test } from 'vitest';
import {
  mirroredSolid,
  noddedSolid,
  rolledSolid,
  solidDistanceMm,
  solidPoint,
  turnedSolid,
  type SolidPoint,
} from '#lib/geometry/solid.ts';
import { real } from '#tests/tools/real.ts';

const origin = vec3.create();
const near = (point: SolidPoint, [xMm, yMm, zMm]: Iterable<number>) => {
  expect(point.xMm).toBeCloseTo(xMm ?? NaN, 9);
  expect(point.yMm).toBeCloseTo(yMm ?? NaN, 9);
  expect(point.zMm).toBeCloseTo(zMm ?? NaN, 9);
};

test('[library] turns, nods and rolls are the rotations of gl-matrix about y, x and z; distances are its distances', () => {
  const number = real(-80, 80);
  const tuple = fc.tuple(number, number, number);
  fc.assert(
    fc.property(tuple, tuple, real(-180, 180), (one, other, deg) => {
      const angle = (deg * Math.PI) / 180;
      const point = solidPoint(one);
      // In double numbers: gl-matrix rounds to single ones only what it makes itself.
      near(turnedSolid(point, deg), vec3.rotateY([0, 0, 0], one.slice(), origin, angle));
      // A right hand about x takes y to z; a nod brings z up to y.
      near(noddedSolid(point, deg), vec3.rotateX([0, 0, 0], one.slice(), origin, -angle));
      near(rolledSolid(point, deg), vec3.rotateZ([0, 0, 0], one.slice(), origin, angle));
      expect(solidDistanceMm(point, solidPoint(other))).toBeCloseTo(
        vec3.distance(one.slice(), other.slice()),
        9,
      );
    }),
  );
});

test('[hand] a quarter turn brings the front to the client’s left, a nod up, a roll the left side up; the mirror changes sides only', () => {
  const point = { xMm: 1, yMm: 2, zMm: 3 };
  near(turnedSolid(point, 90), [3, 2, -1]);
  near(noddedSolid(point, 90), [1, 3, -2]);
  near(rolledSolid(point, 90), [-2, 1, 3]);
  expect(mirroredSolid(point)).toEqual({ xMm: -1, yMm: 2, zMm: 3 });
  expect(solidPoint([1, 2, 3])).toEqual(point);
  expect(solidDistanceMm(point, { xMm: 3, yMm: 5, zMm: 9 })).toBe(7);
});
