import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anchorDistances, frontAnchors } from '#lib/mapping/placing/anchorDistances.ts';
import { real } from '../../../tools/real.ts';
import { at, sides } from './marks.ts';

describe('front anchors', () => {
  it('[hand] a nose 40 wide that leans 2 mm to the left: wings 18 and 22, one distance 20; nostril 12 ∓ 2', () => {
    const anchors = anchorDistances(sides({ noseWing: at(18, -40) }, { noseWing: at(22, -40) }), 0.6);
    expect(anchors['nose-wing']).toEqual({ right: 18, left: 22, bothMm: 20, leftMinusRightMm: 4 });
    expect(anchors['inner-corner']).toEqual({ right: 16, left: 16, bothMm: 16, leftMinusRightMm: 0 });
    expect(anchors['nostril-middle']).toEqual({ right: 10, left: 14, bothMm: 12, leftMinusRightMm: 4 });
  });
  it('[property] a lean moves the sides and leaves the one distance where it was', () => {
    fc.assert(
      fc.property(real(14, 24), real(-6, 6), real(0.3, 0.9), (half, lean, share) => {
        const upright = anchorDistances(
          sides({ noseWing: at(half, -38) }, { noseWing: at(half, -38) }),
          share,
        );
        const leaning = anchorDistances(
          sides({ noseWing: at(half - lean, -38) }, { noseWing: at(half + lean, -38) }),
          share,
        );
        for (const name of frontAnchors) expect(leaning[name].bothMm).toBeCloseTo(upright[name].bothMm, 9);
        expect(leaning['nose-wing'].leftMinusRightMm).toBeCloseTo(2 * lean, 9);
        expect(leaning['nostril-middle'].left - leaning['nostril-middle'].right).toBeCloseTo(2 * lean, 9);
        expect(leaning['nostril-middle'].bothMm).toBeCloseTo(share * half, 9);
      }),
    );
  });
  it('[property] exchanging the sides exchanges the distances', () => {
    fc.assert(
      fc.property(
        real(14, 24),
        real(14, 24),
        real(12, 20),
        real(12, 20),
        (wingR, wingL, cornerR, cornerL) => {
          const right = { noseWing: at(wingR, -38), innerCorner: at(cornerR, -1) };
          const left = { noseWing: at(wingL, -38), innerCorner: at(cornerL, -1) };
          const one = anchorDistances({ right, left }, 0.6);
          const other = anchorDistances({ right: left, left: right }, 0.6);
          for (const name of frontAnchors) {
            expect(other[name].right).toBeCloseTo(one[name].left, 9);
            expect(other[name].bothMm).toBeCloseTo(one[name].bothMm, 9);
            expect(other[name].leftMinusRightMm).toBeCloseTo(-one[name].leftMinusRightMm, 9);
          }
        },
      ),
    );
  });
});
