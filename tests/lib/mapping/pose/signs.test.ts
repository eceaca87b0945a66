import fc from 'fast-check';
import { expect, test } from 'vitest';
import { falseDifferences } from '#lib/mapping/pose/falseDifferences.ts';
import { mmPerUnit, scaleDoubtMm } from '#lib/mapping/pose/irisScale.ts';
import { straightPose } from '#lib/mapping/pose/headPose.ts';
import { noseBaseAheadMm, turnFakesMm, turnLikeNoseOff, turnSign } from '#lib/mapping/pose/turnSign.ts';
import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { signedDistanceMm } from '#lib/geometry/line.ts';
import { posedMarks } from '#lib/mapping/pose/posedMarks.ts';
import { real } from '#tests/tools/real.ts';

test('[property] a turned head is known by front and tail with opposite signs, near or far, and which way', () => {
  fc.assert(
    fc.property(
      real(2, 20),
      fc.constantFrom(1, -1),
      fc.oneof(fc.constant('far' as const), real(250, 1500)),
      (size, way, cameraMm) => {
        const seen = falseDifferences({ ...straightPose, turnDeg: way * size, cameraMm });
        if (!seen.ok) throw new Error(seen.reason);
        expect(turnSign({ frontMm: seen.outwardMm.front, tailMm: seen.outwardMm.tail, leastMm: 0.4 })).toBe(
          way > 0 ? 'left' : 'right',
        );
      },
    ),
  );
});

test('[hand] both must reach the least, with opposite signs', () => {
  const sign = (frontMm: number, tailMm: number) => turnSign({ frontMm, tailMm, leastMm: 0.5 });
  expect(sign(0.5, -0.5)).toBe('left');
  expect(sign(-0.5, 0.5)).toBe('right');
  expect(sign(0.49, -0.5)).toBe('none');
  expect(sign(0.5, -0.49)).toBe('none');
  expect(sign(-0.49, 0.5)).toBe('none');
  expect(sign(-0.5, 0.49)).toBe('none');
  expect(sign(0.8, 0.8)).toBe('none');
  expect(sign(-0.8, -0.8)).toBe('none');
});

test('[hand] 2(z − z_ref) sin ψ: 10 mm ahead at 30° is 10 mm', () => {
  expect(turnFakesMm(10, 30)).toBeCloseTo(10, 12);
  expect(turnFakesMm(-10, 30)).toBeCloseTo(-10, 12);
});

test('[hand] a nose base 2 mm off looks like asin(2 / 24.72): 60.583 less the mean of 37.579, 31.734 and 38.263', () => {
  expect(noseBaseAheadMm).toBeCloseTo(60.583 - (37.579 + 31.734 + 38.263) / 3, 9);
  const turn = turnLikeNoseOff(2);
  expect(turn.ok && turn.turnDeg).toBeCloseTo(4.64, 2);
  expect(turnLikeNoseOff(-2)).toEqual({ ok: true, turnDeg: -(turn.ok ? turn.turnDeg : 0) });
  expect(turnLikeNoseOff(24.8)).toEqual({ ok: false, reason: 'more-than-a-turn-shows' });
  expect(turnLikeNoseOff(24.7).ok).toBe(true);
});

test('[library] the fitted midline of the three eye pairs sees the same nose base in a picture turned by so much', () => {
  for (const offMm of [-4, -1, 0.5, 2, 6]) {
    const turn = turnLikeNoseOff(offMm);
    if (!turn.ok) throw new Error(turn.reason);
    const { pairs, singles } = posedMarks({ ...straightPose, turnDeg: turn.turnDeg });
    const fit = fitMidline([pairs.innerCorner, pairs.outerCorner, pairs.pupil]);
    if (!fit.ok) throw new Error(fit.reason);
    expect(Math.abs(signedDistanceMm(singles.subnasale, fit.line) - offMm)).toBeLessThan(
      0.012 * Math.abs(offMm),
    );
  }
});

test('[hand] a posed picture counts as taken at rest, sitting, the skin as usual: only the pose is wrong with it', () => {
  expect(posedMarks({ ...straightPose, turnDeg: 20 }).taken).toEqual({
    pose: 'rest',
    posture: 'sitting',
    skin: 'normal',
  });
});

test('[table] scale by iris, 11.7 ± 0.5 mm: ± 0.1 on a difference of 1.5 mm, ± 3 to 4 on a length of 45 mm', () => {
  const wide = { irisMm: 11.7, spreadMm: 0.5 };
  expect(scaleDoubtMm(1.5, wide, 2)).toBeCloseTo(0.128, 3);
  expect(scaleDoubtMm(-1.5, wide, 2)).toBeCloseTo(0.128, 3);
  expect(scaleDoubtMm(45, wide, 2)).toBeCloseTo(3.846, 3);
  expect(scaleDoubtMm(45, { irisMm: 11.71, spreadMm: 0.42 }, 2)).toBeCloseTo(3.228, 3);
  expect(mmPerUnit(234, wide)).toBeCloseTo(0.05, 12);
});
