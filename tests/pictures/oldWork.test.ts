import { describe, expect, it } from 'vitest';
import { drawFace } from '#components/pictures/face/drawFace.ts';
import { faceMarkup } from '#components/pictures/faceMarkup.ts';
import { faceSvgText } from '#components/pictures/faceSvgText.ts';
import { defaultFace, plannedFace, type Face } from '#lib/face/face.ts';
import type { Form } from '#lib/face/form.ts';
import { browOf } from '#lib/face/landmarks.ts';
import { practiceOldShape } from '#lib/face/oldShape.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import { withOldWork } from '#lib/face/withOldWork.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';

/** Mid grey: L* 53.585 is #808080. */
const grey = { l: 53.585, a: 0, b: 0 };
const { frontLower, archLower, tail, archTop, frontTop } = browOf(defaultFace.landmarks.right);
const corners = [frontLower, archLower, tail, archTop, frontTop];
const withOld = (form: Partial<Form> = {}): Face => plannedFace({}, { oldWork: { right: corners }, ...form });
const oldOf = (face: Face, prefix = 'f') =>
  faceMarkup(drawFace(face, 'band', 3), prefix).paths.filter(({ role }) => role === 'old');
/**
 * The straight strokes of a path, as far as each goes across and down: paths are written in steps from the
 * place before.
 */
const strokes = (d: string) =>
  [...d.matchAll(/l(-?[\d.]+) ?(-?[\d.]+)/g)].map(
    ([, across, down]) => [Number(across), Number(down)] as const,
  );
const startX = (d: string): number => Number(/^m(-?[\d.]+)/i.exec(d)?.[1]);

describe('old work', () => {
  it('[hand] three soft areas, a hatch at 45° and a thin line, all in the ink of its role when its colour was not read', () => {
    const paths = oldOf(withOld());
    expect(paths.map(({ strokeMm }) => strokeMm)).toEqual([undefined, undefined, undefined, 0.22, 0.25]);
    expect(paths.map(({ colour }) => colour)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    // Steps are rounded to a tenth: only strokes longer than 2 mm show their direction to two degrees.
    const long = strokes(paths[3]?.d ?? '').filter(([across, down]) => Math.hypot(across, down) > 2);
    expect(long.length).toBeGreaterThan(20);
    for (const [across, down] of long)
      expect(Math.abs(Math.abs(Math.atan2(down, across)) * (180 / Math.PI) - 45)).toBeLessThan(2.1);
  });

  it('[table] a colour that was read fills the areas, 97 of 100 parts in the middle; line and hatch keep their ink', () => {
    const paths = oldOf(withOld({ oldPigment: grey }));
    expect(paths.map(({ colour }) => colour)).toEqual([
      '#808080',
      '#808080',
      '#808080',
      undefined,
      undefined,
    ]);
    const see = paths.slice(0, 3).reduce((left, { opacity = 1 }) => left * (1 - opacity), 1);
    expect(1 - see).toBeCloseTo(1 - 0.6 * 0.4 * 0.12, 9);
    expect(1 - see).toBeGreaterThan(0.97);
    expect(
      faceSvgText(drawFace(withOld({ oldPigment: grey }), 'band', 3), { l: 60, a: 10, b: 16 }),
    ).toContain('fill="#808080"');
  });

  it('[hand] only the side that has old work shows it', () => {
    expect(oldOf(plannedFace())).toEqual([]);
    expect(oldOf(withOld()).map(({ d }) => startX(d) < 0)).toEqual([true, true, true, true, true]);
  });

  it('[property] the soft areas grow from the inside out, whichever way round the corners run', () => {
    const widthOf = (d: string) => {
      let x = 0;
      const places = [...d.matchAll(/([mlcz])([^mlcz]*)/gi)].flatMap(([, kind = '', numbers = '']) => {
        const values = [...numbers.matchAll(/-?\.?\d+(?:\.\d+)?/g)].map(Number);
        if (kind === 'm' || kind === 'l') return [(x += values[0] ?? 0)];
        return Array.from({ length: values.length / 6 }, (_, i) => (x += values[6 * i + 4] ?? 0));
      });
      return Math.max(...places) - Math.min(...places);
    };
    for (const round of [corners, corners.toReversed()]) {
      const widths = oldOf(withOld({ oldWork: { right: round } }))
        .slice(0, 3)
        .map(({ d }) => widthOf(d));
      expect(widths).toEqual(widths.toSorted((a, b) => b - a));
      expect((widths[0] ?? 0) - (widths[2] ?? 0)).toBeGreaterThan(1.5);
    }
  });
});

describe('a practice face with old work', () => {
  it('[property] no mark moves, both sides have corners of the planner’s old shape, and the sides are not mirrored', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { face } = practiceFace(seed, 2);
      const old = withOldWork(face, seed);
      expect(old.landmarks).toEqual(face.landmarks);
      expect(withOldWork(face, seed)).toEqual(old);
      const { right, left } = old.form.oldWork ?? {};
      const brow = forBrowMarks((mark) => ({
        uMm: face.landmarks.right[mark][0],
        vMm: face.landmarks.right[mark][1],
      }));
      expect(right).toEqual(practiceOldShape(brow, seed).corners.map(({ uMm, vMm }) => [uMm, vMm]));
      expect(left).not.toEqual(right);
      expect(oldOf(old).length).toBe(10);
    }
  });

  it('[hand] its colour is drawn as it was read', () => {
    expect(
      oldOf(withOldWork(plannedFace(), 1, grey)).filter(({ colour }) => colour === '#808080').length,
    ).toBe(6);
    expect(withOldWork(plannedFace(), 1).form.oldPigment).toBeUndefined();
  });
});

describe('a scar', () => {
  it('[hand] is a pale spindle with a fine edge across one brow, not a hair', () => {
    const { shapes } = drawFace(plannedFace({}, { scar: { side: 'left', t: 0.6, lean: 0.3 } }), 'band', 3);
    const scar = shapes.filter(({ part }) => part === 'scar');
    expect(scar.map(({ role, strokeMm }) => [role, strokeMm])).toEqual([
      ['pale', undefined],
      ['soft', 0.12],
    ]);
    expect(drawFace(plannedFace(), 'band', 3).shapes.some(({ part }) => part === 'scar')).toBe(false);
  });
});
