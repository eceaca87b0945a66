import { growthFromMarginMm } from '#lib/mapping/plan/growth.ts';
import { coverMarginFactor } from '#lib/mapping/numbers/plan.ts';
import { worked } from '../worked.ts';

/** The ferry pilot of Tern Quay, invented: old work above the top she allows. */
const ferryPilotOldShape = worked({
  id: 'ferry-pilot-old-shape',
  inputs: { topMm: 20.5, raiseMm: 1, oldTopMm: 23.3, uncertaintyMm: 0.3, oldThicknessMm: 6.5 },
  run: ({ topMm, raiseMm, oldTopMm, uncertaintyMm, oldThicknessMm }) => {
    const grows = growthFromMarginMm(coverMarginFactor, uncertaintyMm);
    return {
      allowed: topMm + raiseMm,
      factor: coverMarginFactor,
      grows,
      share: (100 * grows) / oldThicknessMm,
      chased: oldTopMm - topMm + grows / 2,
      answer: oldTopMm - (topMm + raiseMm),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['cover-margin-factor', 'old-brow-thickness-mm', 'lighten-what-does-not-fit'],
});

/** Worked examples about covering an old shape. */
export const coverWorked = {
  'ferry-pilot-old-shape': ferryPilotOldShape,
} as const;
