import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { pigmentedReflectance } from '#lib/colour/healing/healedColour.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { bandOrder, bandRows, bottleUnits } from '#lib/colour/recipe/bandRows.ts';
import { firstBands } from '#lib/colour/recipe/mixScorer.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { restBounds } from '#lib/colour/recipe/restBounds.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { foldedWeights } from '#lib/tables/foldedWeights.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const task: RecipeTask = {
  skin,
  setting: { depthMm: 0.1, coverage: 0.9, veilShare: 0.35 },
  bottles,
  ageing: startAgeing,
  doses: [0.1, 0.4, 0.2],
  times: [0, 3],
  target: { l: 47, a: 10, b: 13 },
  mostBottles: 2,
  mostDrops: 3,
  mostWhiteShare: 1,
};
const boundsOf = (some: RecipeTask) => restBounds(bandRows(some), bottleUnits(some), some);

/** What the bands after the first add to Y for a bottle alone: the definition, band by band. */
function restOf(some: RecipeTask, bottle: number, dose: number, time: number): number {
  const spectrum = pigmentedReflectance(
    some.skin,
    mixLayer(
      some.bottles[bottle]?.shares ?? raise(),
      some.doses[dose] ?? NaN,
      leftOf(some.ageing, some.times[time] ?? NaN),
    ),
    some.setting,
  );
  return bandOrder
    .slice(firstBands)
    .reduce((sum, band) => sum + (foldedWeights.D65.y[band] ?? NaN) * (spectrum[band] ?? NaN), 0);
}

test('[property] for one bottle both bounds are what its last bands add to Y; for all, no bottle adds less or more', () => {
  const whole = boundsOf(task);
  expect(whole).toHaveLength(2 * 3 * 2);
  task.doses.forEach((_, dose) =>
    task.times.forEach((__, time) => {
      const at = 2 * (dose * 2 + time);
      const rests = bottles.map((___, bottle) => restOf(task, bottle, dose, time));
      expect(whole[at]).toBeLessThanOrEqual(Math.min(...rests));
      expect(whole[at + 1]).toBeGreaterThanOrEqual(Math.max(...rests));
      // No wider than the bands could be with the blackest and the whitest of all.
      expect(whole[at]).toBeGreaterThan(0.8 * Math.min(...rests));
      expect(whole[at + 1]).toBeLessThan(1.2 * Math.max(...rests));
      for (const bottle of [0, 6, 10, 11]) {
        const own = boundsOf({ ...task, bottles: bottles.slice(bottle, bottle + 1) });
        // The room for the fraction is 8e-6 of the weight of these bands.
        expect(own[at]).toBeCloseTo(rests[bottle] ?? NaN, 3);
        expect(own[at + 1]).toBeCloseTo(rests[bottle] ?? NaN, 3);
      }
    }),
  );
});

function raise(): never {
  throw new Error('missing');
}
