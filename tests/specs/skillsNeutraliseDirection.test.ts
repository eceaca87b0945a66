import { expect, test } from 'vitest';
import { skinOf } from '#lib/colour/old/skinOf.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { bottleMoves } from '#lib/colour/pigment/bottleMoves.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { neutraliseDirection } from '#skills/colour/neutraliseDirection.ts';
import { hueBottles, oldHueCases } from '#lib/colour/old/oldHueCases.ts';
import {
  neutraliseDirectionWords,
  type NeutraliseDirectionGiven,
} from '#words/skills/neutraliseDirection.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(neutraliseDirection, neutraliseDirectionWords, seed);
});

test('[property] the moves kept with the cases are those of the model, to a tenth', () => {
  for (const {
    old,
    skin: [l, a, b],
    today,
    moves,
  } of oldHueCases) {
    const skin = skinOf({ skinL: l, skinA: a, skinB: b, oldWork: old });
    if (!skin.ok) throw new Error(skin.reason);
    const model = bottleMoves(
      skin,
      { l, a, b },
      bottles,
      0.1,
      { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
      leftOf(startAgeing, 0),
    );
    hueBottles.forEach((id, i) => {
      const found = model.find((one) => one.id === id)?.move;
      const kept = moves[i];
      if (!found || !kept) throw new Error(id);
      expect(
        [kept[0] - found.l, kept[1] - found.a, kept[2] - found.b].every((miss) => Math.abs(miss) <= 0.0501),
        `${old} on ${l}, ${id}`,
      ).toBe(true);
    });
    expect(today[0]).toBeLessThan(l);
  }
});

test('[property] skins from L* 36 to 72 come equally often, and no one bottle is always right', () => {
  for (const l of [72, 63, 54, 45, 36])
    expect(
      seeds.filter((seed) => neutraliseDirection.given(seed).skin[0] === l).length,
      `L* ${l}`,
    ).toBeGreaterThan(80);
  const rights = seeds.map((seed) => {
    const answer = neutraliseDirection.answer(neutraliseDirection.given(seed));
    return answer.kind === 'choice' ? answer.correct : '';
  });
  for (const id of hueBottles) expect(rights.filter((right) => right === id).length, id).toBeGreaterThan(40);
});

test('[hand] the way back is 10 redder and 20 yellower: (1, 2) lies on it, (2, 1) has cosine 4/5, (−2, 1) is square to it', () => {
  const given: NeutraliseDirectionGiven = {
    client: 'baker',
    old: 'grey-blue',
    skin: [60, 10, 18],
    today: [45, 0, -2],
    bottles: [
      { id: 'orange', move: [-2, 1, 2] },
      { id: 'red-oxide-some-yellow', move: [-3, 2, 1] },
      { id: 'black-iron', move: [-5, -2, 1] },
    ],
  };
  const answer = neutraliseDirection.answer(given);
  expect(answer.kind === 'choice' && answer.correct).toBe('orange');
  const [way, cosines] = neutraliseDirection.steps(given);
  expect(way?.values).toEqual({ a: 10, b: 20 });
  expect(cosines?.values.cosines).toMatch(/1\.00; .* 0\.80; .* 0\.00$/);
});
