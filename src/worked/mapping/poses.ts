import { budgetMm } from '#lib/mapping/uncertainty/budget.ts';
import { compareHeights } from '#lib/mapping/compare/compareHeights.ts';
import { worked } from '../worked.ts';

/** The baker, invented: apart when she talks, not shown to be apart at rest. */
const bakerTalking = worked({
  id: 'baker-talking',
  inputs: {
    talkRight: 19.6,
    talkLeft: 21.2,
    restRight: 18.2,
    restLeft: 18.6,
    temMm: 0.3,
    readings: 3,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({
    talkRight,
    talkLeft,
    restRight,
    restLeft,
    temMm,
    readings,
    pencilHalfMm,
    caliperHalfMm,
    threadHalfMm,
  }) => {
    const tools = budgetMm(
      [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm })),
    );
    const how = { posture: 'sitting', skin: 'normal' } as const;
    const { first, second } = compareHeights(
      { taken: { pose: 'raised', ...how }, archMm: { right: talkRight, left: talkLeft } },
      { taken: { pose: 'rest', ...how }, archMm: { right: restRight, left: restLeft } },
      { temMm, readings, budgetMm: tools },
    );
    return {
      tools,
      factor: first.k,
      both: first.standardUncertainty,
      real: first.k * first.standardUncertainty,
      talking: first.value,
      answer: second.value,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
});

/** Worked examples about poses. */
export const posesWorked = {
  'baker-talking': bakerTalking,
} as const;
