import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { readingValues } from '#lib/colour/numbers/reading.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftWithLoss } from '#lib/colour/healing/leftWithLoss.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { worked } from '../worked.ts';

/** Invented skin; the mix the drop calculator opens on. Twice the dose, deeper, with twice the loss. */
const healsAlike = worked({
  id: 'heals-alike',
  inputs: {
    brown: 3,
    orange: 1,
    skinL: 63,
    skinA: 10,
    skinB: 19,
    covered: 60,
    firstMm: 0.15,
    firstDose: 0.2,
    secondMm: 0.18,
    secondDose: 0.4,
    times: 2,
    later: 3,
  },
  run: ({
    brown,
    orange,
    skinL,
    skinA,
    skinB,
    covered,
    firstMm,
    firstDose,
    secondMm,
    secondDose,
    times,
    later,
  }) => {
    const shares = sharesOf(
      bottleIds.map((id) => (id === 'brown-yellow-heavy' ? brown : id === 'orange' ? orange : 0)),
      bottles,
    );
    const skin = skinOptics({ l: skinL, a: skinA, b: skinB });
    if (!skin.ok) throw new Error('The worked example has no skin: no measured one is like it.');
    const healed = (depthMm: number, dose: number, loss: number, years: number): Lab =>
      healedColour(skin, mixLayer(shares, dose, leftWithLoss(startAgeing, years, loss)), {
        depthMm,
        coverage: covered / 100,
        veilShare: modelValues.veilShare,
      });
    const [first, second] = [healed(firstMm, firstDose, 1, 1), healed(secondMm, secondDose, times, 1)];
    return {
      firstL: first.l,
      firstA: first.a,
      firstB: first.b,
      secondL: second.l,
      secondA: second.a,
      secondB: second.b,
      allowed: readingValues.oneReading,
      laterApart: ciede2000(healed(firstMm, firstDose, 1, later), healed(secondMm, secondDose, times, later)),
      answer: ciede2000(first, second),
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['one-reading-doubt', 'losses-looked-at'],
});

/** Worked examples about healed colours. */
export const healedWorked = {
  'heals-alike': healsAlike,
} as const;
