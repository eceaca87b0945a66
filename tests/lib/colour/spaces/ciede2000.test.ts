import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sharmaPairs } from '#checks/colour/sharmaPairs.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { real } from '#tests/tools/real.ts';

const lab = fc.record({ l: real(0, 100), a: real(-90, 90), b: real(-90, 90) });

test('[table] the 34 printed pairs, both ways round', () => {
  expect(sharmaPairs).toHaveLength(34);
  for (const [l1, a1, b1, l2, a2, b2, printed] of sharmaPairs) {
    const [one, other] = [
      { l: l1, a: a1, b: b1 },
      { l: l2, a: a2, b: b2 },
    ];
    expect(Math.abs(ciede2000(one, other) - printed), `${l1} ${a1} ${b1}`).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(ciede2000(other, one) - printed), `${l1} ${a1} ${b1} turned round`).toBeLessThanOrEqual(
      5e-5,
    );
  }
});

test('[library] culori in lab65 says the same for 20,000 pairs', () => {
  const theirs = differenceCiede2000();
  fc.assert(
    fc.property(lab, lab, (one, other) => {
      // Where two hues lie half a turn apart to the last digit, rounding decides which way round the mean
      // lies: both are right.
      fc.pre(Math.abs(one.a * other.b - one.b * other.a) > 1e-6 || one.a * other.a + one.b * other.b >= 0);
      expect(ciede2000(one, other)).toBeCloseTo(
        theirs({ mode: 'lab65', ...one }, { mode: 'lab65', ...other }),
        9,
      );
    }),
    { numRuns: 20_000 },
  );
});

test('[property] nothing differs from itself; the order does not matter; a grey has no hue of its own', () => {
  fc.assert(
    fc.property(lab, lab, (one, other) => {
      expect(ciede2000(one, one)).toBe(0);
      expect(ciede2000(one, other)).toBeCloseTo(ciede2000(other, one), 9);
    }),
  );
  expect(ciede2000({ l: 50, a: 0, b: 0 }, { l: 50, a: 0, b: 0 })).toBe(0);
  expect(ciede2000({ l: 40, a: 0, b: 0 }, { l: 60, a: 0, b: 0 })).toBeCloseTo(20, 9);
});

test('[library] hues exactly opposite are met half way round, whatever the rounding', () => {
  const theirs = differenceCiede2000();
  fc.assert(
    fc.property(real(0, 100), real(0, 100), real(-90, 90), real(-90, 90), (l1, l2, a, b) => {
      const [one, other] = [
        { l: l1, a, b },
        { l: l2, a: -a, b: -b },
      ];
      const ours = ciede2000(one, other);
      expect(ours).toBeCloseTo(ciede2000(other, one), 9);
      // A hair short of half a turn says the same, and there both packages agree which way round the mean
      // lies.
      const turn = (b > 0 || (b === 0 && a > 0) ? 1 : -1) * 5e-9;
      const short = {
        l: l2,
        a: -a * Math.cos(turn) - b * Math.sin(turn),
        b: a * Math.sin(turn) - b * Math.cos(turn),
      };
      expect(Math.abs(ours - theirs({ mode: 'lab65', ...one }, { mode: 'lab65', ...short }))).toBeLessThan(
        1e-5,
      );
    }),
    { numRuns: 5000 },
  );
});
