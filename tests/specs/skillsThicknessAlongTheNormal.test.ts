import { Bezier } from 'bezier-js';
import { expect, test } from 'vitest';
import { halfEdgeCurve } from '#lib/mapping/outline/halfEdge.ts';
import { thicknessAlongTheNormal } from '#skills/mapping/thicknessAlongTheNormal.ts';
import {
  lineNames,
  type ThicknessGiven,
  thicknessAlongTheNormalWords,
} from '#words/skills/thicknessAlongTheNormal.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const exactOf = (given: ThicknessGiven) => {
  const answer = thicknessAlongTheNormal.answer(given);
  if (answer.kind !== 'number') throw new Error('not a number');
  return answer.exact;
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(thicknessAlongTheNormal, thicknessAlongTheNormalWords, seed);
});

test('[property] of three lines exactly one is square to the slope that is told; one is upright; straight up is too long by more than the tolerance', () => {
  for (const seed of seeds) {
    const given = thicknessAlongTheNormal.given(seed);
    const slopes = lineNames.map((name) => {
      const { lower, upper } = given.lines[name];
      return { name, side: (upper.uMm - lower.uMm) / (upper.vMm - lower.vMm) };
    });
    // Square: as far inward for 10 up as the brow climbs over 10 out.
    const nearest = [...slopes].sort(
      (a, b) => Math.abs(a.side + given.climbMm / 10) - Math.abs(b.side + given.climbMm / 10),
    );
    expect(nearest[0]?.name, `seed ${seed}`).toBe(given.square);
    expect(Math.abs((nearest[0]?.side ?? 9) + given.climbMm / 10), `seed ${seed}`).toBeLessThan(0.09);
    expect(slopes.find(({ side }) => side === 0)?.name, `seed ${seed}`).toBe(given.upright);
    const { lower, upper } = given.lines[given.upright];
    expect(upper.vMm - lower.vMm - exactOf(given), `seed ${seed}`).toBeGreaterThan(0.2);
  }
});

test('[library] the ends of the lines lie on the edges, by bezier-js, to the tenth they are rounded to', () => {
  for (const seed of seeds.filter((seed) => seed % 10 === 0)) {
    const { lines, brow } = thicknessAlongTheNormal.given(seed);
    const edge = (front: 'frontTop' | 'frontLower', arch: 'archTop' | 'archLower') =>
      [brow[front], brow.tail].flatMap((end) => {
        const curve = new Bezier(
          ...halfEdgeCurve({ end, arch: brow[arch] }).flatMap(({ uMm, vMm }) => [uMm, vMm]),
        );
        return Array.from({ length: 401 }, (_, i) => curve.get(i / 400));
      });
    const away = (points: readonly { x: number; y: number }[], hit: { uMm: number; vMm: number }) =>
      Math.min(...points.map(({ x, y }) => Math.hypot(x - hit.uMm, y - hit.vMm)));
    for (const name of lineNames) {
      expect(away(edge('frontTop', 'archTop'), lines[name].upper)).toBeLessThan(0.11);
      expect(away(edge('frontLower', 'archLower'), lines[name].lower)).toBeLessThan(0.11);
    }
  }
});

test('[hand] 3 mm sideways and 4 mm up: 5 mm; straight up 5.9; wrong ways 4, 7', () => {
  const at = (uMm: number, vMm: number) => ({ uMm, vMm });
  const given: ThicknessGiven = {
    ...thicknessAlongTheNormal.given(0),
    lines: {
      A: { lower: at(50, 10), upper: at(50, 15.9) },
      B: { lower: at(48.5, 11), upper: at(51.5, 15) },
      C: { lower: at(52, 8), upper: at(48, 18) },
    },
    square: 'B',
    upright: 'A',
    leaning: 'C',
  };
  expect(exactOf(given)).toBe(5);
  const value = (id: string) =>
    Number(thicknessAlongTheNormal.slips.find((slip) => slip.id === id)?.value(given));
  expect(value('straight-up')).toBeCloseTo(5.9, 12);
  expect(value('height-only')).toBe(4);
  expect(value('sum-of-parts')).toBe(7);
  expect(value('leaning-wrong')).toBeCloseTo(Math.sqrt(116), 12);
});

test('[property] fronts and tails, right and left, all three letters come often', () => {
  const counts = new Map<string, number>();
  const add = (key: string) => counts.set(key, (counts.get(key) ?? 0) + 1);
  for (const seed of seeds) {
    const { climbMm, side, square } = thicknessAlongTheNormal.given(seed);
    add(climbMm > 0 ? 'climbs' : 'falls');
    add(side);
    add(square);
  }
  expect(counts.size).toBe(7);
  for (const count of counts.values()) expect(count).toBeGreaterThan(200);
});
