import { expect, test } from 'vitest';
import { underOutline } from '#lib/mapping/under/underOutline.ts';
import { whereNotToDraw } from '#skills/mapping/whereNotToDraw.ts';
import { partEnds, whereNotToDrawWords, type OutlinePart } from '#words/skills/whereNotToDraw.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const rightOf = (seed: number) => {
  const answer = whereNotToDraw.answer(whereNotToDraw.given(seed));
  if (answer.kind !== 'choice') throw new Error('not a choice');
  return answer.correct;
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(whereNotToDraw, whereNotToDrawWords, seed);
});

test('[property] the library finds nothing under the same millimetres', () => {
  for (const seed of seeds) {
    const given = whereNotToDraw.given(seed);
    const { outlineMm, hairFromMm, hairToMm, thinFromMm, leavesBoneMm } = given;
    // The bone's edge lies 1 mm under the outline at the arch and crosses it where the outline leaves the
    // bone.
    const archMm = outlineMm * 0.6;
    const atTailMm = leavesBoneMm >= outlineMm ? -0.5 : (outlineMm - leavesBoneMm) / (leavesBoneMm - archMm);
    const read = underOutline({
      bone: { archMm, lengthMm: outlineMm, atArchMm: -1, atTailMm },
      hair: { fromMm: hairFromMm, toMm: hairToMm },
      thinFromMm,
    });
    if (!read.ok) throw new Error(read.reason);
    const part = rightOf(seed);
    const [found] = read.under.nothing;
    expect(read.under.nothing.length, `seed ${seed}`).toBe(part === 'none' ? 0 : 1);
    if (!found) continue;
    const [fromMm, toMm] = partEnds(given, part === 'bare-tail' ? 'bare-tail' : 'off-bone');
    expect(found.fromMm, `seed ${seed}`).toBeCloseTo(fromMm, 9);
    expect(found.toMm, `seed ${seed}`).toBeCloseTo(toMm, 9);
  }
});

test('[property] no close calls, and each answer comes often', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const { outlineMm, hairFromMm, hairToMm, thinFromMm, leavesBoneMm } = whereNotToDraw.given(seed);
    expect(Math.abs(hairToMm - leavesBoneMm), `seed ${seed}`).toBeGreaterThanOrEqual(1.5);
    expect(hairToMm - thinFromMm, `seed ${seed}`).toBeGreaterThanOrEqual(2);
    expect(hairFromMm).toBeGreaterThanOrEqual(1.5);
    for (const end of [hairToMm, leavesBoneMm])
      if (end < outlineMm) expect(outlineMm - end, `seed ${seed}`).toBeGreaterThanOrEqual(4);
    counts.set(rightOf(seed), (counts.get(rightOf(seed)) ?? 0) + 1);
  }
  const often = ['bare-tail', 'off-bone', 'none'] as const satisfies readonly OutlinePart[];
  for (const part of often) expect(counts.get(part), part).toBeGreaterThan(240);
  expect(counts.size).toBe(3);
});

test('[hand] hair to 30, bone to 34 of 42: nothing from 34; bone to 27: nothing from 30; hair to the end: nothing anywhere', () => {
  const given = { outlineMm: 42, hairFromMm: 2, hairToMm: 30, thinFromMm: 20, leavesBoneMm: 34 };
  const said = (changed: Partial<typeof given>) => {
    const answer = whereNotToDraw.answer({ ...given, ...changed });
    return answer.kind === 'choice'
      ? whereNotToDrawWords.option(answer.correct, { ...given, ...changed })
      : '';
  };
  expect(said({})).toBe('From 34.0 to 42.0 mm');
  expect(said({ leavesBoneMm: 27 })).toBe('From 30.0 to 42.0 mm');
  expect(said({ leavesBoneMm: 42 })).toBe('No part of it');
  expect(said({ hairToMm: 42 })).toBe('No part of it');
});
