import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { leftOf, plainPrediction, type Plan } from '#lib/colour/healing/uncertainHealing.ts';
import { underLamps } from '#lib/colour/spectrum/underLamps.ts';

const plan: Plan = {
  shares: sharesOf([0, 0, 1, 0, 0, 3], bottles),
  dose: 0.3,
  setting: { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
  ageing: startAgeing,
  doubts: startDoubts,
};
const skins = (
  [
    [72, 8, 16],
    [63, 10, 19],
    [54, 11, 18],
    [45, 11, 17],
    [36, 10, 14],
  ] as const
).map(([l, a, b]) => {
  const skin = skinOptics({ l, a, b });
  if (!skin.ok) throw new Error(skin.reason);
  return skin;
});

test('[property] each look is the plain prediction under its lamp, and each step counts from the first time under the same lamp', () => {
  for (const skin of skins) {
    for (const lamp of ['D50', 'A', 'LED-B3'] as const) {
      const found = underLamps(skin, plan, [0, 1, 2], lamp);
      expect(found.skin).toEqual({
        day: spectrumToLab(skin.reflectance, 'D65'),
        seen: spectrumToLab(skin.reflectance, lamp),
      });
      expect(found.times).toEqual(
        [0, 1, 2].map((years) => ({
          years,
          day: plainPrediction(skin, plan, years, 'D65'),
          seen: plainPrediction(skin, plan, years, lamp),
          sinceDay: ciede2000(
            plainPrediction(skin, plan, 0, 'D65'),
            plainPrediction(skin, plan, years, 'D65'),
          ),
          sinceSeen: ciede2000(
            plainPrediction(skin, plan, 0, lamp),
            plainPrediction(skin, plan, years, lamp),
          ),
        })),
      );
    }
  }
});

test('[property] daylight against daylight is no change; no time is no move', () => {
  const [skin] = skins;
  if (!skin) throw new Error('no skin');
  const {
    skin: bare,
    times: [first],
  } = underLamps(skin, plan, [0], 'D65');
  expect(bare.day).toEqual(bare.seen);
  expect(first).toMatchObject({ sinceDay: 0, sinceSeen: 0 });
});

test('[property] on five skins tungsten adds 3 to 7 in a*, more to skin than to the brow; two years move the brow alike under both lamps', () => {
  for (const skin of skins) {
    const {
      skin: bare,
      times: [first, last],
    } = underLamps(skin, plan, [0, 2], 'A');
    if (!first || !last) throw new Error('no times');
    const [ofSkin, ofBrow] = [bare.seen.a - bare.day.a, first.seen.a - first.day.a];
    expect(ofBrow).toBeGreaterThan(3);
    expect(ofSkin).toBeGreaterThan(ofBrow);
    expect(ofSkin).toBeLessThan(7);
    expect(Math.abs(last.sinceDay - last.sinceSeen)).toBeLessThan(0.3);
    expect(last.sinceDay).toBeGreaterThan(1);
  }
});

test('[property] steps count from the first time asked for, whichever that is', () => {
  const [skin] = skins;
  if (!skin) throw new Error('no skin');
  const {
    times: [one, two],
  } = underLamps(skin, plan, [1, 2], 'A');
  expect(one).toMatchObject({ years: 1, sinceDay: 0, sinceSeen: 0 });
  expect(two?.sinceSeen).toBeCloseTo(
    ciede2000(plainPrediction(skin, plan, 1, 'A'), plainPrediction(skin, plan, 2, 'A')),
    12,
  );
});

test('[property] in this palette mixes of two bottles that match in daylight match under tungsten and the LED as well; two years part more of them', () => {
  const [, skin] = skins;
  if (!skin) throw new Error('no skin');
  const mixes = bottles.flatMap((_, i) =>
    bottles.flatMap((__, j) =>
      j <= i
        ? []
        : [
            [1, 1],
            [3, 1],
            [1, 3],
          ].flatMap(([one = 0, other = 0]) =>
            [0.2, 0.4].map((dose) => {
              const shares = sharesOf(
                bottles.map((___, k) => (k === i ? one : k === j ? other : 0)),
                bottles,
              );
              const seen = (years: number, lamp: 'D65' | 'A' | 'LED-B3') =>
                healedColour(skin, mixLayer(shares, dose, leftOf(startAgeing, years)), plan.setting, lamp);
              return {
                day: seen(0, 'D65'),
                tungsten: seen(0, 'A'),
                led: seen(0, 'LED-B3'),
                later: seen(2, 'D65'),
              };
            }),
          ),
    ),
  );
  const alike = mixes.flatMap((one, i) =>
    mixes
      .slice(i + 1)
      .filter((other) => ciede2000(one.day, other.day) < 0.8)
      .map((other) => [one, other] as const),
  );
  expect(alike.length).toBeGreaterThan(100);
  const most = (of: 'tungsten' | 'led' | 'later') =>
    Math.max(...alike.map(([one, other]) => ciede2000(one[of], other[of])));
  expect(most('tungsten')).toBeLessThan(1);
  expect(most('led')).toBeLessThan(1);
  expect(most('later')).toBeGreaterThan(1.5);
});
