import fc from 'fast-check';
import { vec2 } from 'gl-matrix';
import { describe, expect, it } from 'vitest';
import { tailBand } from '#lib/mapping/placing/tailBand.ts';
import {
  sharedTailLine,
  tailAgainstLine,
  tailLimitAtMm,
  tailLineOf,
  type TailLine,
} from '#lib/mapping/placing/tailLine.ts';
import { real } from '../../../tools/real.ts';
import { at, roundSide, sides } from './marks.ts';

/** Three across for four up: wing (20, −40), corner (50, 0). */
const line: TailLine = { wing: at(20, -40), corner: at(50, 0) };

describe('the tail line', () => {
  it('[hand] stands at 20 at the wing, 35 half way, 50 at the corner, 59 at 12 mm up', () => {
    expect([-40, -20, 0, 12].map((v) => tailLimitAtMm(line, v))).toEqual([20, 35, 50, 59]);
    expect(tailLineOf(roundSide)).toEqual(line);
  });
  it('[hand] a tail at (56, 12) ends 3 mm inside, level, and 3 × 4/5 mm the shortest way', () => {
    // From the wing to the tail (36, 52); along the line (30, 40): (36·30 + 52·40) / 2500.
    const inside = tailAgainstLine(line, at(56, 12));
    expect(inside).toMatchObject({ ok: true, limitMm: 59, insideLevelMm: 3 });
    if (!inside.ok) return;
    expect(inside.insideMm).toBeCloseTo(2.4, 12);
    expect(inside.along).toBeCloseTo(3160 / 2500, 12);
  });
  it('[hand] a tail at (63, 12) ends 4 mm beyond, level, and 3.2 the shortest way', () => {
    const beyond = tailAgainstLine(line, at(63, 12));
    expect(beyond.ok && beyond.insideLevelMm).toBeCloseTo(-4, 12);
    expect(beyond.ok && beyond.insideMm).toBeCloseTo(-3.2, 12);
  });
  it('[table] a printed distance from a point to a line: (10, 3) and 5x + 6y + 12 = 0 give 10.243', () => {
    // Two points of the line, the higher one as the corner.
    const against = tailAgainstLine({ wing: at(0, -2), corner: at(-6, 3) }, at(10, 3));
    expect(against.ok && against.insideMm).toBeCloseTo(-10.243, 3);
  });
  it.each([
    ['below', at(50, -41)],
    ['level with', at(50, -40)],
    ['on', at(20, -40)],
  ])('[hand] an outer corner %s the wing is refused', (_, corner) => {
    expect(tailAgainstLine({ wing: at(20, -40), corner }, at(56, 12))).toEqual({
      ok: false,
      reason: 'corner-not-above-wing',
    });
  });
  it('[library] distance and foot agree with vectors of gl-matrix', () => {
    fc.assert(
      fc.property(
        real(14, 24),
        real(-45, -30),
        real(40, 52),
        real(-2, 5),
        real(45, 65),
        real(4, 24),
        (wu, wv, cu, cv, tu, tv) => {
          const wing = vec2.fromValues(wu, wv);
          const along = vec2.subtract(vec2.create(), vec2.fromValues(cu, cv), wing);
          const unit = vec2.normalize(vec2.create(), along);
          const to = vec2.subtract(vec2.create(), vec2.fromValues(tu, tv), wing);
          const against = tailAgainstLine({ wing: at(wu, wv), corner: at(cu, cv) }, at(tu, tv));
          if (!against.ok) return false;
          // gl-matrix holds 32-bit numbers.
          expect(against.insideMm).toBeCloseTo(
            (unit[0] ?? 0) * (to[1] ?? 0) - (unit[1] ?? 0) * (to[0] ?? 0),
            3,
          );
          expect(against.along).toBeCloseTo(vec2.dot(unit, to) / vec2.length(along), 4);
          return Math.sign(against.insideMm) === Math.sign(against.insideLevelMm);
        },
      ),
    );
  });
  it('[hand] one line for both sides stands in the middle of the two', () => {
    const shared = sharedTailLine(
      sides({ noseWing: at(18, -40) }, { noseWing: at(22, -38), outerCorner: at(46, 3) }),
    );
    expect(shared).toEqual({ wing: at(20, -39), corner: at(48, 1.5) });
  });
});

describe('the level band', () => {
  it('[hand] a tip at 12 between 10 and 17: 2 over the lower edge, 5 under the top', () => {
    expect(tailBand(roundSide)).toEqual({ overLowerMm: 2, underTopMm: 5 });
    expect(tailBand({ ...roundSide, tail: at(56, 8.8) }).overLowerMm).toBeCloseTo(-1.2, 12);
    expect(tailBand({ ...roundSide, tail: at(56, 18) }).underTopMm).toBe(-1);
  });
});
