import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { pigmentedReflectance } from '#lib/colour/healing/healedColour.ts';
import { rise } from '#lib/colour/layers/kubelkaMunk.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { quickRise, rowLength, skinMap } from '#lib/colour/recipe/skinMap.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';

test('[property] the fraction stands for √u coth √u within 7.8e-6 of it, up to 200 and beyond', () => {
  const off = Array.from({ length: 24_000 }, (_, i) => i / 100).map((u) =>
    Math.abs(quickRise(u) / rise({ k: Math.sqrt(u), s: 0 }) - 1),
  );
  expect(Math.max(...off)).toBeLessThanOrEqual(7.8e-6);
});

test.each([72, 54, 36])(
  '[property] five numbers a band stand for veil, ground, surface and coverage, on skin of L* %i',
  (l) => {
    const skin = skinOptics({ l, a: 10, b: 16 });
    if (!skin.ok) throw new Error(skin.reason);
    const setting = { depthMm: 0.12, coverage: 0.6, veilShare: 0.3 };
    const map = skinMap(skin, setting);
    for (const dose of [0, 0.05, 0.3]) {
      const layer = mixLayer(sharesOf([3, 1, 0, 2], bottles), dose);
      pigmentedReflectance(skin, layer, setting).forEach((seen, band) => {
        const [n1 = 0, n2 = 0, n3 = 0, m1 = 0, m2 = 0] = map.subarray(band * rowLength);
        expect(m1 >= 0 && m2 >= 0 && n3 >= 0 && n3 <= 1, 'what the error bound of the screen rests on').toBe(
          true,
        );
        const { k, s } = layer[band] ?? { k: NaN, s: NaN };
        const c = rise({ k, s });
        expect((n1 * s + n2 * k + n3 * c) / (m1 * s + m2 * k + c)).toBeCloseTo(seen, 12);
      });
    }
  },
);
