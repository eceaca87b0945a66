import { expect, test } from 'vitest';
import { compareSets } from '#lib/mapping/compare/compareSets.ts';
import type { Taken } from '#lib/mapping/marks/markSet.ts';
import { readFace } from '#lib/mapping/compare/readFace.ts';
import { rowUncertainty } from '#lib/mapping/uncertainty/markRow.ts';
import { choices, movePoints, plainFace, turned } from '../faces.ts';

test('[hand] sets that were not taken alike are not compared', () => {
  const other = (taken: Partial<Taken>) => ({ ...plainFace, taken: { ...plainFace.taken, ...taken } });
  expect(compareSets(plainFace, other({ pose: 'raised' }), choices)).toEqual({
    ok: false,
    reason: 'pose-differs',
  });
  expect(compareSets(plainFace, other({ posture: 'lying' }), choices)).toEqual({
    ok: false,
    reason: 'posture-differs',
  });
  expect(compareSets(plainFace, other({ skin: 'swollen' }), choices)).toEqual({
    ok: false,
    reason: 'skin-differs',
  });
  expect(compareSets(other({ posture: 'lying' }), plainFace, choices), 'one lying, one sitting').toEqual({
    ok: false,
    reason: 'posture-differs',
  });
  expect(
    compareSets(other({ posture: 'lying' }), other({ posture: 'lying' }), choices).ok,
    'both lying',
  ).toBe(true);
  expect(
    compareSets(plainFace, other({ pose: 'eyes-closed', posture: 'lying', skin: 'numb' }), choices),
    'the first reason is given',
  ).toEqual({ ok: false, reason: 'pose-differs' });
  expect(compareSets(plainFace, other({ posture: 'lying', skin: 'numb' }), choices)).toEqual({
    ok: false,
    reason: 'posture-differs',
  });
  expect(compareSets(other({ skin: 'swollen' }), other({ skin: 'swollen' }), choices).ok).toBe(true);
});

test('[hand] a set that cannot be read is refused with its own reason', () => {
  const point = movePoints(plainFace, () => ({ xMm: 0, yMm: 0 }));
  expect(compareSets(point, plainFace, choices)).toEqual({ ok: false, reason: 'marks-do-not-fix-a-midline' });
  expect(compareSets(plainFace, turned(plainFace, 80), choices)).toEqual({
    ok: false,
    reason: 'face-not-upright',
  });
});

test('[hand] later minus earlier, each side outward, whatever roll and place each picture has', () => {
  const later = movePoints(plainFace, (p, name, side) => {
    if (name === 'tail' && side === 'right') return { xMm: p.xMm - 2, yMm: p.yMm + 1 };
    return name === 'archTop' && side === 'left' ? { xMm: p.xMm - 0.5, yMm: p.yMm - 3 } : p;
  });
  const result = compareSets(turned(plainFace, -3, 5, 9), turned(later, 6, -20, 14), choices);
  if (!result.ok) throw new Error(result.reason);
  expect(result.changes.tail.right.outward.value).toBeCloseTo(2, 10);
  expect(result.changes.tail.right.up.value).toBeCloseTo(1, 10);
  expect(result.changes.archTop.left.outward.value).toBeCloseTo(-0.5, 10);
  expect(result.changes.archTop.left.up.value).toBeCloseTo(-3, 10);
  expect(result.changes.frontTop.left.up.value).toBeCloseTo(0, 10);
});

test('[hand] uncertainties add as squares; k follows the number of comparisons', () => {
  const face = readFace(plainFace, choices);
  if (!face.ok) throw new Error(face.reason);
  const ten = compareSets(plainFace, plainFace, choices);
  const one = compareSets(plainFace, plainFace, { ...choices, comparisons: 'one' });
  if (!ten.ok || !one.ok) throw new Error('sets alike');
  expect(ten.changes.tail.left.outward.standardUncertainty).toBeCloseTo(
    Math.SQRT2 * rowUncertainty(face.rows.brows.tail.left.u),
    12,
  );
  expect(ten.changes.tail.left.up.standardUncertainty).toBeCloseTo(
    Math.SQRT2 * rowUncertainty(face.rows.brows.tail.left.v),
    12,
  );
  expect(ten.k).toBeCloseTo(2.8, 2);
  expect(one.k).toBeCloseTo(1.96, 3);
  expect(one.changes.tail.left.up.k).toBe(one.k);
});
