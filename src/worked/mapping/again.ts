import {
  budgetMm,
  differenceUncertaintyMm,
  smallestRealDifferenceMm,
} from '#lib/mapping/uncertainty/budget.ts';
import { intervalAround } from '#lib/quantities/interval.ts';
import { chaseFromMm } from '#lib/mapping/numbers/again.ts';
import { nextStep } from '#lib/mapping/again/nextStep.ts';
import { shortOfOutlineMm } from '#lib/mapping/again/shortOfOutline.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { worked } from '../worked.ts';

/** The baker of Tern Quay, invented: her right arch after the first pass. */
const bakerFirstPass = worked({
  id: 'baker-first-pass',
  inputs: {
    approvedMm: 33,
    pigmentMm: 31.5,
    lowerApprovedMm: 27,
    lowerMm: 27,
    temMm: 0.3,
    readings: 5,
    comparisons: 5,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({
    approvedMm,
    pigmentMm,
    lowerApprovedMm,
    lowerMm,
    temMm,
    readings,
    comparisons,
    pencilHalfMm,
    caliperHalfMm,
    threadHalfMm,
  }) => {
    const reading = {
      temMm,
      readings,
      budgetMm: budgetMm([pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm }))),
    };
    const factor = familyCoverageFactor(comparisons);
    const both = differenceUncertaintyMm(reading);
    const at = (vMm: number) => ({ uMm: 0, vMm });
    const short = shortOfOutlineMm('archTop', at(approvedMm), at(pigmentMm));
    const across = shortOfOutlineMm('archLower', at(lowerApprovedMm), at(lowerMm));
    const step = nextStep(
      { short: intervalAround(short, both, factor), across: intervalAround(across, both, factor) },
      'swollen',
      chaseFromMm,
    );
    if (step.do !== 'add-here') throw new Error('The worked example adds nothing.');
    return {
      both,
      factor,
      real: smallestRealDifferenceMm(reading, factor),
      thick: approvedMm - lowerMm,
      answer: step.addMm,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['swollen-chase-from-mm'],
});

/** Worked examples about reading again after the first pass. */
export const againWorked = {
  'baker-first-pass': bakerFirstPass,
} as const;
