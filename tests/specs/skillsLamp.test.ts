import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { lampFacts } from '#lib/colour/facts/lamps.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { lamp } from '#skills/colour/lamp.ts';
import { lampCases } from '#skills/colour/lampCases.ts';
import { lampWords, type LampGiven } from '#words/skills/lamp.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const right = (given: LampGiven) => {
  const answer = lamp.answer(given);
  return answer.kind === 'choice' ? answer.correct : '';
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(lamp, lampWords, seed);
});

test('[property] both lamps, five skins and five mixes come often as the right one', () => {
  const givens = seeds.map(lamp.given);
  for (const under of ['D65', 'A'] as const)
    expect(givens.filter((given) => given.lamp === under).length, under).toBeGreaterThan(200);
  for (const { skin, mixes: all } of lampCases)
    expect(
      givens.filter(({ mixes }) => mixes.every((mix) => all.some((one) => one === mix))).length,
      `L* ${skin[0]}`,
    ).toBeGreaterThan(120);
  const rights = givens.map(right);
  expect(
    [...new Set(rights)].filter((id) => rights.filter((one) => one === id).length > 50).length,
  ).toBeGreaterThanOrEqual(5);
});

test('[property] the colours kept with the cases are those of the model, to a tenth, under both lamps', () => {
  for (const {
    skin: [l, a, b],
    mixes,
  } of lampCases) {
    const skin = skinOptics({ l, a, b });
    if (!skin.ok) throw new Error(skin.reason);
    for (const mix of mixes) {
      const bottle = bottles.find(({ id }) => id === mix.id);
      if (!bottle) throw new Error(mix.id);
      for (const under of ['D65', 'A'] as const) {
        const seen = healedColour(
          skin,
          mixLayer(bottle.shares, 0.3, leftOf(startAgeing, 0)),
          { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
          under,
        );
        expect(
          [mix[under][0] - seen.l, mix[under][1] - seen.a, mix[under][2] - seen.b].every(
            (miss) => Math.abs(miss) <= 0.0501,
          ),
          `${mix.id} on ${l} under ${under}`,
        ).toBe(true);
      }
    }
  }
});

test('[property] the fact about tungsten is what the model gives for the example skins', () => {
  const adds = lampCases.map(({ skin: [l, a, b] }) => {
    const skin = skinOptics({ l, a, b });
    return skin.ok ? spectrumToLab(skin.reflectance, 'A').a - a : NaN;
  });
  const {
    value,
    range: [lo, hi],
  } = lampFacts['tungsten-adds-to-skin'];
  expect(adds[1]).toBeCloseTo(value, 1);
  expect(Math.min(...adds)).toBeCloseTo(lo, 1);
  expect(Math.max(...adds)).toBeCloseTo(hi, 1);
});

test('[hand] wanted 50 / 14 / 15 under tungsten: 50 / 13 / 15 there is 1 away; the one whose daylight is 50 / 14 / 15 is 5 away there', () => {
  const given: LampGiven = {
    client: 'baker',
    lamp: 'A',
    wanted: [50, 14, 15],
    mixes: [
      { id: 'orange', D65: [50, 14, 15], A: [53, 18, 15] },
      { id: 'brown-even', D65: [48, 9, 13], A: [50, 13, 15] },
      { id: 'black-iron', D65: [46, 5, 10], A: [50, 11, 11] },
    ],
  };
  expect(right(given)).toBe('brown-even');
  expect(lamp.slips.map(({ value }) => value(given))).toEqual(['orange', '', 'black-iron']);
  expect(lamp.steps(given)[1]?.values['distances']).toMatch(/1\.0; .* 5\.0; .* 5\.0$/);
});
