import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { healedColour, type Setting } from '#lib/colour/healing/healedColour.ts';
import type { Lamp } from '#lib/colour/spectrum/lamps.ts';
import { mixLayer, pigmentIds, type Shares } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { whatMatters, type Cause } from '#lib/colour/healing/whatMatters.ts';

const skinOf = (l: number, a: number, b: number) => {
  const skin = skinOptics({ l, a, b });
  if (!skin.ok) throw new Error(skin.reason);
  return skin;
};
const skins = [
  skinOf(72, 8, 16),
  skinOf(63, 10, 19),
  skinOf(54, 11, 18),
  skinOf(45, 11, 17),
  skinOf(36, 10, 14),
];
/** Three drops yellow-heavy brown, one drop orange; and a plain iron black. */
const brown = sharesOf([0, 0, 1, 0, 0, 3], bottles);
const black = sharesOf([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1], bottles);
const setting: Setting = { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 };
const left = leftOf(startAgeing, 0);
const changeOf = (rows: ReturnType<typeof whatMatters>, cause: Cause) =>
  rows.find((row) => row.cause === cause)?.change ?? NaN;

test('[property] each row is the difference between two colours of the library, for five skins and two lamps', () => {
  const lamps: readonly Lamp[] = ['D65', 'A'];
  for (const skin of skins) {
    for (const lamp of lamps) {
      const rows = whatMatters(skin, { shares: brown, dose: 0.3, setting, left }, lamp);
      const seen = (dose: number, changed: Partial<Setting> = {}, factors: Shares = left, backscatter = 1) =>
        healedColour(
          skin,
          mixLayer(brown, dose, factors).map(({ k, s }) => ({ k, s: s * backscatter })),
          { ...setting, ...changed },
          lamp,
        );
      const plain = seen(0.3);
      expect(changeOf(rows, 'dose')).toBeCloseTo(ciede2000(seen(0.225), seen(0.375)), 12);
      expect(changeOf(rows, 'coverage')).toBeCloseTo(
        ciede2000(seen(0.3, { coverage: 0.45 }), seen(0.3, { coverage: 0.75 })),
        12,
      );
      expect(changeOf(rows, 'depth')).toBeCloseTo(ciede2000(plain, seen(0.3, { depthMm: 0.2 })), 12);
      expect(changeOf(rows, 'veil')).toBeCloseTo(
        ciede2000(seen(0.3, { veilShare: 0.25 }), seen(0.3, { veilShare: 0.45 })),
        12,
      );
      expect(changeOf(rows, 'backscatter')).toBeCloseTo(
        ciede2000(seen(0.3, {}, left, 0.5), seen(0.3, {}, left, 2)),
        12,
      );
      for (const id of pigmentIds) {
        if (brown[id] > 0)
          expect(changeOf(rows, id)).toBeCloseTo(
            ciede2000(plain, seen(0.3, {}, { ...left, [id]: left[id] * 1.2 })),
            12,
          );
      }
    }
  }
});

test('[property] largest first, each cause once, only the pigments that are in the mix', () => {
  for (const skin of skins) {
    const rows = whatMatters(skin, { shares: brown, dose: 0.3, setting, left });
    expect(rows.map(({ change }) => change)).toEqual(
      rows.map(({ change }) => change).toSorted((one, other) => other - one),
    );
    expect(rows.map(({ cause }) => cause).toSorted()).toEqual([
      '77491',
      '77492',
      '77499',
      '77891',
      'backscatter',
      'coverage',
      'depth',
      'dose',
      'veil',
    ]);
    expect(
      whatMatters(skin, { shares: black, dose: 0.3, setting, left })
        .map(({ cause }) => cause)
        .toSorted(),
    ).toEqual(['77499', 'backscatter', 'coverage', 'depth', 'dose', 'veil']);
  }
});

test('[property] on five skins depth and veil come before any one pigment, and dose before two of its three pigments; deep skin asks less of the recipe', () => {
  const pigments = ['77491', '77492', '77499'] as const;
  const tables = skins.map((skin) => whatMatters(skin, { shares: brown, dose: 0.3, setting, left }));
  for (const rows of tables) {
    for (const id of pigments) {
      for (const cause of ['dose', 'depth', 'veil', 'coverage'] as const)
        expect(changeOf(rows, cause), `${cause} and ${id}`).toBeGreaterThan(changeOf(rows, id));
    }
  }
  const black499 = tables.map((rows) => changeOf(rows, '77499'));
  expect(black499).toEqual(black499.toSorted((one, other) => other - one));
});

test('[hand] whole cover cannot grow; bare skin has nothing to change but the veil that is not seen', () => {
  const [skin] = skins;
  if (!skin) throw new Error('no skin');
  const whole = whatMatters(skin, { shares: black, dose: 0.3, setting: { ...setting, coverage: 1 }, left });
  const seen = (coverage: number) => healedColour(skin, mixLayer(black, 0.3, left), { ...setting, coverage });
  expect(changeOf(whole, 'coverage')).toBeCloseTo(ciede2000(seen(0.75), seen(1)), 12);
  for (const { change } of whatMatters(skin, { shares: black, dose: 0, setting, left }))
    expect(change).toBeLessThan(1e-6);
});
