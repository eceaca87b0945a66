import { describe, expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { bottleMoves } from '#lib/colour/pigment/bottleMoves.ts';
import { greenFrom } from '#lib/colour/pigment/greenFrom.ts';
import { hueCosine } from '#lib/colour/spaces/hueCosine.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { overOldPigment } from '#lib/colour/pigment/oldPigment.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';

const setting = { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 };
const left = leftOf(startAgeing, 0);
const skins: readonly Lab[] = [
  { l: 72, a: 8, b: 16 },
  { l: 63, a: 10, b: 19 },
  { l: 54, a: 11, b: 18 },
  { l: 45, a: 11, b: 17 },
  { l: 36, a: 10, b: 14 },
];

function oldIn(bare: Lab, old: Lab) {
  const skin = overOldPigment(bare, old);
  if (!skin.ok) throw new Error(skin.reason);
  return skin;
}
const movesOver = (bare: Lab, old: Lab) => bottleMoves(oldIn(bare, old), bare, bottles, 0.02, setting, left);
const named = (moves: ReturnType<typeof movesOver>, id: string) => {
  const found = moves.find((one) => one.id === id);
  if (!found) throw new Error(id);
  return { ...found.move, cosine: found.cosine ?? NaN };
};

test('[hand] cosines: the same way 1, square 0, back −1, 3-4-5 beside the axis 0.6; lightness does not count; nowhere has none', () => {
  expect(hueCosine({ l: 5, a: 2, b: 1 }, { l: -9, a: 4, b: 2 })).toBeCloseTo(1, 12);
  expect(hueCosine({ l: 1, a: 2, b: 1 }, { l: 1, a: -1, b: 2 })).toBeCloseTo(0, 12);
  expect(hueCosine({ l: 1, a: 2, b: 1 }, { l: 1, a: -2, b: -1 })).toBeCloseTo(-1, 12);
  expect(hueCosine({ l: 0, a: 3, b: 4 }, { l: 0, a: 7, b: 0 })).toBeCloseTo(0.6, 12);
  expect(hueCosine({ l: 3, a: 0, b: 0 }, { l: 0, a: 7, b: 0 })).toBeUndefined();
  expect(hueCosine({ l: 0, a: 7, b: 0 }, { l: 3, a: 0, b: 0 })).toBeUndefined();
});

test('[hand] green from: 1 − d is below zero from 1; a parabola from its first root; never where it only touches', () => {
  const straight = greenFrom((dose) => 1 - dose, 2);
  expect(straight.ok && straight.dose).toBeCloseTo(1, 9);
  // Between the doses looked at, and after the last but one of them.
  for (const root of [1.01, 1.99]) {
    const found = greenFrom((dose) => root - dose, 2);
    expect(found.ok && found.dose).toBeCloseTo(root, 9);
  }
  const dip = greenFrom((dose) => (dose - 0.3) * (dose - 0.5), 1);
  expect(dip.ok && dip.dose).toBeCloseTo(0.3, 9);
  expect(greenFrom((dose) => (dose - 0.5) ** 2, 1)).toEqual({ ok: false, reason: 'never-green' });
  expect(greenFrom((dose) => 1 - dose, 0.9)).toEqual({ ok: false, reason: 'never-green' });
  const atOnce = greenFrom(() => -1, 1);
  expect(atOnce.ok && atOnce.dose).toBeLessThan(1e-9);
});

describe.each(skins)('over skin of L* $l', (bare) => {
  test('[property] every bottle is told once, best first, and its move is today’s colour against the healed one', () => {
    const old = { l: bare.l * 0.74, a: 0, b: -2 };
    const moves = movesOver(bare, old);
    expect(moves.map(({ id }) => id).sort()).toEqual(bottles.map(({ id }) => id).sort());
    moves.forEach(({ id, move, cosine = NaN }, i) => {
      const bottle = bottles.find((one) => one.id === id);
      if (!bottle) throw new Error(id);
      const healed = healedColour(oldIn(bare, old), mixLayer(bottle.shares, 0.02, left), setting);
      expect([move.l, move.a, move.b]).toEqual(
        [healed.l - old.l, healed.a - old.a, healed.b - old.b].map((value) => expect.closeTo(value, 6)),
      );
      expect(cosine).toBeLessThanOrEqual(moves[i - 1]?.cosine ?? 1.0000001);
    });
  });

  test('[property] grey-blue wants orange (cosine above .94), better than yellow alone', () => {
    const moves = movesOver(bare, { l: bare.l * 0.74, a: 0, b: -2 });
    expect(named(moves, 'orange').cosine).toBeGreaterThan(0.94);
    expect(named(moves, 'orange').cosine).toBeGreaterThan(named(moves, 'yellow-oxide-some-white').cosine);
  });

  test('[property] over old pink and old orange, iron black goes cooler (a*, b* down) and is the darkest: the price', () => {
    for (const [a, b] of [
      [19, 12],
      [17, 25],
    ] as const) {
      const moves = movesOver(bare, { l: bare.l * 0.84, a, b });
      const black = named(moves, 'black-iron');
      expect(black.a).toBeLessThan(0);
      expect(black.b).toBeLessThan(0);
      expect(black.cosine).toBeGreaterThan(0);
      expect(black.l).toBe(Math.min(...moves.map(({ move }) => move.l)));
    }
  });

  test('[property] yellow alone over grey-blue never turns a* negative when the old work is not green itself; it stays far less red than the skin', () => {
    const skin = oldIn(bare, { l: bare.l * 0.74, a: 0, b: -2 });
    const yellow = bottles[0];
    if (!yellow) throw new Error('no yellow');
    const seen = (dose: number) => healedColour(skin, mixLayer(yellow.shares, dose, left), setting);
    expect(greenFrom((dose) => seen(dose).a, 0.8)).toEqual({ ok: false, reason: 'never-green' });
    expect(seen(0.1).b).toBeGreaterThan(0);
    expect(seen(0.1).a).toBeLessThan(bare.a / 2);
  });
});

test('[hand] a bottle that moves nothing comes last, behind those that go the wrong way', () => {
  const [bare] = skins;
  if (!bare) throw new Error('a skin');
  const empty = { id: 'empty', shares: { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0 } };
  const moves = bottleMoves(
    oldIn(bare, { l: bare.l * 0.84, a: 19, b: 12 }),
    bare,
    [empty, ...bottles],
    0.02,
    setting,
    left,
  );
  expect(moves.at(-1)).toMatchObject({ id: 'empty', cosine: undefined });
  expect(Math.min(...moves.slice(0, -1).map(({ cosine }) => cosine ?? NaN))).toBeLessThan(0);
});

test.each(skins.slice(0, 3))(
  '[property] over skin of L* $l, violet wants yellow to orange: mostly yellow, some red has a cosine of .95 or more',
  (bare) => {
    expect(
      named(movesOver(bare, { l: bare.l * 0.74, a: 7, b: -1 }), 'mostly-yellow-some-red').cosine,
    ).toBeGreaterThan(0.95);
  },
);

test.each(skins.slice(0, 3))(
  '[property] the green trap over grey-blue on L* $l: equal drops of yellow and iron black fall below zero, three yellow to one black do not',
  (bare) => {
    const skin = oldIn(bare, { l: bare.l * 0.74, a: 0, b: -2 });
    const from = (yellow: number, black: number) => {
      const shares = sharesOf(
        bottles.map(({ id }) =>
          id === 'yellow-oxide-some-white' ? yellow : id === 'black-iron' ? black : 0,
        ),
        bottles,
      );
      return greenFrom((dose) => healedColour(skin, mixLayer(shares, dose, left), setting).a, 0.8);
    };
    const even = from(1, 1);
    const blacker = from(1, 2);
    if (!even.ok || !blacker.ok) throw new Error('no trap');
    expect(even.dose).toBeGreaterThan(0.35);
    expect(even.dose).toBeLessThan(0.5);
    expect(blacker.dose).toBeLessThan(even.dose);
    expect(from(3, 1).ok).toBe(false);
  },
);
