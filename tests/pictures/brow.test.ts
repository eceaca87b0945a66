import { describe, expect, it } from 'vitest';
import { browOutline, lowerV, placeIn, runAt, upperV } from '#components/pictures/face/brow/browEdges.ts';
import { browHairs } from '#components/pictures/face/brow/browHairs.ts';
import type { Hair } from '#components/pictures/face/brow/growth.ts';
import { pigmentStrokes } from '#components/pictures/face/brow/pigmentStrokes.ts';
import { distance, type Spot } from '#lib/face/spot.ts';
import { defaultFace } from '#lib/face/face.ts';
import { browOf, type BrowSpots } from '#lib/face/landmarks.ts';
import { drawFrom } from '#lib/quantities/seed.ts';

/** The five marks of the closed-form example: 287.625 mm². */
const example: BrowSpots = {
  frontLower: [15, 17],
  frontTop: [14, 25],
  archTop: [47, 33],
  archLower: [46, 27],
  tail: [64, 20],
};
const brow = browOf(defaultFace.landmarks.left);
const full = { count: 230, gaps: 0.15, sparseTail: 0 };
const hairs: readonly Hair[] = Array.from({ length: 20 }, (_, seed) =>
  browHairs(brow, full, drawFrom(seed)),
).flat();

const degrees = (rad: number): number => (rad * 180) / Math.PI;
const direction = ({ root, tip }: Hair): number => degrees(Math.atan2(tip[1] - root[1], tip[0] - root[0]));
const shareOf = (list: readonly Hair[], holds: (hair: Hair) => boolean): number =>
  list.filter(holds).length / list.length;

describe('the outline is the marks', () => {
  it('[hand] every mark is a knot of the outline', () => {
    const knots = browOutline(example).flatMap((step): Spot[] =>
      step[0] === 'C' ? [step[3]] : step[0] === 'M' || step[0] === 'L' ? [step[1]] : [],
    );
    for (const mark of Object.values(example)) expect(knots).toContainEqual(mark);
  });

  it('[table] area of the example by sums of thin strips: 287.625 mm² (closed form)', () => {
    let area = 0;
    const step = 0.001;
    for (let u = 14 + step / 2; u < 64; u += step) {
      const straightFront = u < 15 ? 17 + (15 - u) * 8 : Number.NEGATIVE_INFINITY;
      area += step * (upperV(example, u) - Math.max(lowerV(example, u), straightFront));
    }
    expect(area).toBeCloseTo(287.625, 1);
  });

  it('[property] no overshoot: the edges stay between their ends and the arch, level at the arch', () => {
    for (let u = 15; u <= 64; u += 0.1) {
      expect(upperV(example, u)).toBeLessThanOrEqual(33);
      expect(lowerV(example, u)).toBeLessThanOrEqual(27);
      expect(lowerV(example, u)).toBeGreaterThanOrEqual(17);
    }
    expect(Math.abs(upperV(example, 47.01) - 33)).toBeLessThan(1e-4);
  });
});

describe('hair grows as brow hair grows', () => {
  it('[hand] front hairs up', () => {
    const front = hairs.filter(({ t }) => t < 0.07);
    expect(shareOf(front, (hair) => direction(hair) > 60 && direction(hair) < 112)).toBeGreaterThan(0.9);
  });

  it('[hand] lower hairs out and up, upper hairs out and down, meeting in a spine', () => {
    const against = (hair: Hair): number => direction(hair) - degrees(runAt(brow, hair.t, hair.s));
    const lower = hairs.filter(({ t, s }) => t > 0.25 && t < 0.8 && s < 0.35);
    const upper = hairs.filter(({ t, s }) => t > 0.35 && t < 0.8 && s > 0.75);
    expect(shareOf(lower, (hair) => against(hair) > 5)).toBeGreaterThan(0.95);
    expect(shareOf(upper, (hair) => against(hair) < -2)).toBeGreaterThan(0.9);
    const tips = (list: readonly Hair[]): number =>
      list.reduce(
        (sum, { tip }) =>
          sum + (tip[1] - lowerV(brow, tip[0])) / (upperV(brow, tip[0]) - lowerV(brow, tip[0])),
        0,
      ) / list.length;
    expect(
      tips(upper.filter(({ tip }) => tip[0] < brow.tail[0] - 2)) -
        tips(lower.filter(({ tip }) => tip[0] < brow.tail[0] - 2)),
    ).toBeLessThan(0.35);
  });

  it('[hand] tail hairs point down with the tail', () => {
    expect(
      shareOf(
        hairs.filter(({ t }) => t > 0.82),
        (hair) => direction(hair) < 0,
      ),
    ).toBeGreaterThan(0.85);
  });

  it('[property] tips keep to the marks: under 1 % pass an edge by 0.75 mm, none by 1.2', () => {
    const past = hairs.map(({ tip: [u, v] }) => {
      const within = Math.min(Math.max(u, brow.frontLower[0]), brow.tail[0]);
      return Math.max(v - upperV(brow, within), lowerV(brow, within) - v, u - brow.tail[0] - 0.25, 0);
    });
    expect(past.filter((mm) => mm > 0.75).length / past.length).toBeLessThan(0.01);
    expect(Math.max(...past)).toBeLessThan(1.2);
  });

  it('[hand] most hairs are 5 to 9 mm long, none longer than 9.6', () => {
    const lengths = hairs.map(({ root, tip }) => distance(root, tip));
    expect(lengths.filter((mm) => mm >= 4.9 && mm <= 9.1).length / lengths.length).toBeGreaterThan(0.75);
    expect(Math.max(...lengths)).toBeLessThan(9.6);
  });

  it('[hand] hair stands on all five marks within 0.3 mm', () => {
    for (let seed = 0; seed < 20; seed++) {
      const dense = browHairs(brow, { ...full, gaps: 0 }, drawFrom(seed));
      const nearest = (mark: Spot, end: 'root' | 'tip'): number =>
        Math.min(...dense.map((hair) => distance(hair[end], mark)));
      expect(nearest(brow.frontLower, 'root')).toBeLessThan(0.3);
      expect(nearest(brow.frontTop, 'tip')).toBeLessThan(0.3);
      expect(nearest(brow.archTop, 'root')).toBeLessThan(0.3);
      expect(nearest(brow.archLower, 'root')).toBeLessThan(0.3);
      expect(nearest(brow.tail, 'tip')).toBeLessThan(0.3);
    }
  });

  it('[hand] a round loss stays bare, a sparse tail thins', () => {
    const patch = { t: 0.5, s: 0.5, radiusMm: 3 };
    const centre = placeIn(brow, patch.t, patch.s);
    const patchy = browHairs(brow, { ...full, patch }, drawFrom(1));
    expect(patchy.filter(({ root }) => distance(root, centre) < 2).length).toBe(0);
    const tailHairs = (list: readonly Hair[]): number => list.filter(({ t }) => t > 0.75).length;
    expect(tailHairs(browHairs(brow, { ...full, sparseTail: 0.8 }, drawFrom(1)))).toBeLessThan(
      0.5 * tailHairs(browHairs(brow, full, drawFrom(1))),
    );
  });
});

describe('a pigment plan', () => {
  it('[hand] 60 strokes of 8 mm: the exact count, each 8 mm along itself', () => {
    const strokes = pigmentStrokes(example, 60, 8, drawFrom(3));
    expect(strokes.length).toBe(60);
    for (const { root, bend, tip } of strokes)
      expect(distance(root, bend) + distance(bend, tip)).toBeCloseTo(8, 1);
  });
});
