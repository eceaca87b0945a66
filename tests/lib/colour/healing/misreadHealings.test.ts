import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { depthsLookedAt, dosesBetween, lossesLookedAt } from '#lib/colour/healing/healingAxes.ts';
import { healingMap } from '#lib/colour/healing/healingMap.ts';
import { leftWithLoss } from '#lib/colour/healing/leftWithLoss.ts';
import { drawFrom, drawNormal, drawOne, drawWhole } from '#lib/quantities/seed.ts';
import { skins } from './healingSkins.ts';

const [, middle] = skins;
if (!middle) throw new Error('There is no skin.');

const veilShare = 0.35;

/** A reading that lies `away` (ΔE00) from a colour, in a direction drawn at random. Found by halving. */
function misread(truth: Lab, away: number, draw: () => number): Lab {
  const [x, y, z] = [drawNormal(draw), drawNormal(draw), drawNormal(draw)];
  const at = (by: number): Lab => ({ l: truth.l + by * x, a: truth.a + by * y, b: truth.b + by * z });
  let [near, far] = [0, 40];
  for (let round = 0; round < 40; round++) {
    const half = (near + far) / 2;
    if (ciede2000(at(half), truth) < away) near = half;
    else far = half;
  }
  return at(near);
}

const nearestOf = (values: readonly number[], value: number) =>
  values.reduce((best, one) =>
    Math.abs(Math.log(one / value)) < Math.abs(Math.log(best / value)) ? one : best,
  );

test('[property] of 300 invented healings, read with an error, the cell nearest the truth is in the set in at least 95 of 100', () => {
  const draw = drawFrom(2026);
  const doses = dosesBetween(0.1, 0.8);
  const error = 2;
  const missed: number[] = [];
  for (let i = 0; i < 300; i++) {
    const skin = skins[i % skins.length] ?? middle;
    const recipe = bottles.map(() => 0);
    for (const drops of [3, 1]) recipe[drawWhole(draw, 0, bottles.length - 2)] = drops;
    const shares = sharesOf(recipe, bottles);
    const [depthMm, dose, loss, years] = [
      0.06 + 0.24 * draw(),
      0.1 * 8 ** draw(),
      drawOne(draw, lossesLookedAt),
      drawOne(draw, [0, 0.5, 1, 2]),
    ];
    const setting = { coverage: 0.2 + 0.8 * draw(), veilShare };
    const truth = healedColour(skin, mixLayer(shares, dose, leftWithLoss(startAgeing, years, loss)), {
      ...setting,
      depthMm,
    });
    const seen = misread(truth, error * draw(), draw);
    const nearest = {
      depthsMm: [
        depthsLookedAt.reduce((best, one) =>
          Math.abs(one - depthMm) < Math.abs(best - depthMm) ? one : best,
        ),
      ],
      doses: [nearestOf(doses, dose)],
      losses: lossesLookedAt,
    };
    const [cell] = healingMap(
      { skin, shares, setting, ageing: startAgeing, readings: [{ years, seen }], error },
      nearest,
    );
    if (!cell?.fits.includes(loss)) missed.push(i);
  }
  expect(missed.length).toBeLessThanOrEqual(15);
});
