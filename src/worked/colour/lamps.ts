import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import type { Lamp } from '#lib/colour/spectrum/lamps.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics, type SkinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { leftOf, type Plan } from '#lib/colour/healing/uncertainHealing.ts';
import { underLamps } from '#lib/colour/spectrum/underLamps.ts';
import { whatMatters, type Cause } from '#lib/colour/healing/whatMatters.ts';
import { skinSpectra } from '#lib/tables/skinSpectra.ts';
import { worked } from '../worked.ts';

function opticsOf(lab: Lab): SkinOptics {
  const skin = skinOptics(lab);
  if (!skin.ok) throw new Error('The worked example has no skin: no measured one is like it.');
  return skin;
}

/** The mix the drop calculator opens on. */
function brownPlan(brown: number, orange: number, dose: number, coverage: number): Plan {
  const shares = sharesOf(
    bottleIds.map((id) => (id === 'brown-yellow-heavy' ? brown : id === 'orange' ? orange : 0)),
    bottles,
  );
  return {
    shares,
    dose,
    setting: { depthMm: modelValues.depthMm, coverage: coverage / 100, veilShare: modelValues.veilShare },
    ageing: startAgeing,
    doubts: startDoubts,
  };
}

/** One brow, two lamps, two dates. */
const sameBrowTwoLamps = worked({
  id: 'same-brow-two-lamps',
  inputs: { brown: 3, orange: 1, dose: 0.3, coverage: 60, skinL: 63, skinA: 10, skinB: 19 },
  run: ({ brown, orange, dose, coverage, skinL, skinA, skinB }) => {
    const {
      skin,
      times: [first, last],
    } = underLamps(
      opticsOf({ l: skinL, a: skinA, b: skinB }),
      brownPlan(brown, orange, dose, coverage),
      [0, 2],
      'A',
    );
    if (!first || !last) throw new Error('The worked example has no dates.');
    return {
      dayA: first.day.a,
      lampA: first.seen.a,
      answer: first.seen.a - first.day.a,
      skinLampA: skin.seen.a,
      skinStep: skin.seen.a - skin.day.a,
      lastLampA: last.seen.a,
      falseStep: last.seen.a - first.day.a,
      trueStep: last.seen.a - first.seen.a,
      sinceDay: last.sinceDay,
      sinceLamp: last.sinceSeen,
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['tungsten-kelvin'],
});

/** Two measured people (subjects 5 and 53) whose skins nearly match in daylight. */
const twoSkinsUnderLamps = worked({
  id: 'two-skins-under-lamps',
  inputs: { first: 5, second: 53 },
  run: ({ first, second }) => {
    const at = (subject: number, lamp: Lamp) => {
      const found = skinSpectra.find(({ id }) => id === subject);
      if (!found) throw new Error('The worked example has no such subject.');
      return spectrumToLab(found.reflectance, lamp);
    };
    const apart = (lamp: Lamp) => ciede2000(at(first, lamp), at(second, lamp));
    return {
      firstA: at(first, 'D65').a,
      secondA: at(second, 'D65').a,
      firstLampA: at(first, 'A').a,
      secondLampA: at(second, 'A').a,
      day: apart('D65'),
      led: apart('LED-B3'),
      answer: apart('A'),
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: [],
});

/** What moves the colour of one mix at six weeks, in three skins. */
const whatMattersMost = worked({
  id: 'what-matters-most',
  inputs: {
    brown: 3,
    orange: 1,
    dose: 0.3,
    coverage: 60,
    skinL: 63,
    skinA: 10,
    skinB: 19,
    deepL: 36,
    deepA: 10,
    deepB: 14,
  },
  run: ({ brown, orange, dose, coverage, skinL, skinA, skinB, deepL, deepA, deepB }) => {
    const { shares, setting } = brownPlan(brown, orange, dose, coverage);
    const rowsIn = (lab: Lab) =>
      whatMatters(opticsOf(lab), { shares, dose, setting, left: leftOf(startAgeing, 0) });
    const changeIn = (rows: ReturnType<typeof rowsIn>, cause: Cause) =>
      rows.find((row) => row.cause === cause)?.change ?? 0;
    const [rows, deep] = [rowsIn({ l: skinL, a: skinA, b: skinB }), rowsIn({ l: deepL, a: deepA, b: deepB })];
    return {
      answer: changeIn(rows, 'coverage'),
      depth: changeIn(rows, 'depth'),
      doseMoves: changeIn(rows, 'dose'),
      veil: changeIn(rows, 'veil'),
      black: changeIn(rows, '77499'),
      yellow: changeIn(rows, '77492'),
      deepCoverage: changeIn(deep, 'coverage'),
      deepDepth: changeIn(deep, 'depth'),
      deepDose: changeIn(deep, 'dose'),
      deepBlack: changeIn(deep, '77499'),
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['model-depth-mm', 'veil-share'],
});

export const lampsWorked = {
  'same-brow-two-lamps': sameBrowTwoLamps,
  'two-skins-under-lamps': twoSkinsUnderLamps,
  'what-matters-most': whatMattersMost,
} as const;
