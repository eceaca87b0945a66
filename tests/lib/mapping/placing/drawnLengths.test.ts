import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnLengths, halfEdgeMm } from '#lib/mapping/placing/drawnLengths.ts';
import { real } from '../../../tools/real.ts';
import { at, roundSide } from './marks.ts';

describe('lengths of a brow', () => {
  it('[hand] level from 15 to 56 is 41; the chord over 2 mm of height is √(41² + 2²)', () => {
    const lower = drawnLengths(roundSide, 'frontLower');
    expect(lower.level).toBe(41);
    expect(lower.chord).toBeCloseTo(Math.sqrt(1685), 12);
  });
  it('[hand] from the upper front mark: 40 level, √(40² + 5²); the upper edge does not ask which', () => {
    const upper = drawnLengths(roundSide, 'frontTop');
    expect(upper.level).toBe(40);
    expect(upper.chord).toBeCloseTo(Math.sqrt(1625), 12);
    expect(upper.upperEdge).toBe(drawnLengths(roundSide, 'frontLower').upperEdge);
  });
  it('[hand] a level edge is as long as it is wide, whichever way it runs', () => {
    expect(halfEdgeMm(at(16, 20), at(40, 20))).toBeCloseTo(24, 12);
    expect(halfEdgeMm(at(56, 20), at(40, 20))).toBeCloseTo(16, 12);
  });
  it('[library] half an edge is the length of its Bézier curve', () => {
    fc.assert(
      fc.property(real(8, 34), real(-14, 14), (across, rise) => {
        // Ends at (0, 0), level at (across, rise): control points at thirds, the first on the slope 1.5 rise
        // / across.
        const curve = new Bezier(0, 0, across / 3, rise / 2, (2 * across) / 3, rise, across, rise);
        expect(halfEdgeMm(at(10, 5), at(10 + across, 5 + rise))).toBeCloseTo(curve.length(), 5);
        expect(halfEdgeMm(at(10 + across, 5), at(10, 5 + rise))).toBeCloseTo(curve.length(), 5);
      }),
    );
  });
  it('[property] level ≤ chord < upper edge + the front’s own height', () => {
    fc.assert(
      fc.property(real(10, 20), real(45, 60), real(6, 14), real(18, 26), (front, tail, tailV, archV) => {
        const brow = {
          frontLower: at(front, 10),
          frontTop: at(front + 0.5, 17),
          archTop: at(front + 0.62 * (tail - front), archV),
          tail: at(tail, tailV),
        };
        const { level, chord, upperEdge } = drawnLengths(brow, 'frontTop');
        expect(level).toBeLessThanOrEqual(chord);
        expect(chord).toBeLessThan(upperEdge);
      }),
    );
  });
});
