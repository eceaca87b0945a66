import { budgetMm, smallestRealDifferenceMm } from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { fakedHeightMm } from '#lib/mapping/level/fakedHeight.ts';
import { worked } from '../worked.ts';

/** The violinist, invented: her head leans in the picture and fakes most of what was read. */
const leaningHead = worked({
  id: 'leaning-head',
  inputs: {
    spanMm: 82,
    tiltDeg: 2,
    read: 3.1,
    temMm: 0.3,
    readings: 3,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({ spanMm, tiltDeg, read, temMm, readings, pencilHalfMm, caliperHalfMm, threadHalfMm }) => {
    const answer = fakedHeightMm(spanMm, tiltDeg);
    const tools = budgetMm(
      [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm })),
    );
    return {
      sine: fakedHeightMm(1, tiltDeg),
      left: read - answer,
      real: smallestRealDifferenceMm({ temMm, readings, budgetMm: tools }, familyCoverageFactor(1)),
      answer,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['arches-apart-mm'],
});

/** Worked examples about the level. */
export const levelWorked = {
  'leaning-head': leaningHead,
} as const;
