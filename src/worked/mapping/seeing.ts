import {
  budgetMm,
  differenceUncertaintyMm,
  markUncertaintyMm,
  rectangularMm,
  smallestRealDifferenceMm,
} from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { worked } from '../worked.ts';

/** Invented reading error and budget; the sums are the Guide's. */
const smallestRealDifference = worked({
  id: 'smallest-real-difference',
  inputs: {
    temMm: 0.3,
    readings: 1,
    comparisons: 10,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
    archDifference: 1.8,
  },
  run: ({ temMm, readings, comparisons, pencilHalfMm, caliperHalfMm, threadHalfMm }) => {
    const lines = [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm }));
    const [pencil = 0, caliper = 0, thread = 0] = lines.map(rectangularMm);
    const tools = budgetMm(lines);
    const factor = familyCoverageFactor(comparisons);
    return {
      pencil,
      caliper,
      thread,
      tools,
      factor,
      answer: smallestRealDifferenceMm({ temMm, readings, budgetMm: tools }, factor),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
});

/** The bell-ringer of Tern Quay: invented readings. Her sides differ by 0.7 mm. */
const bellRinger = worked({
  id: 'bell-ringer',
  inputs: {
    sidesMm: 0.7,
    temMm: 0.3,
    readings: 3,
    comparisons: 10,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({ temMm, readings, comparisons, pencilHalfMm, caliperHalfMm, threadHalfMm }) => {
    const tools = budgetMm(
      [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm })),
    );
    const reading = { temMm, readings, budgetMm: tools };
    const factor = familyCoverageFactor(comparisons);
    return {
      tools,
      mean: temMm / Math.sqrt(readings),
      side: markUncertaintyMm(reading),
      both: differenceUncertaintyMm(reading),
      factor,
      answer: smallestRealDifferenceMm(reading, factor),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
});

/** Worked examples about which differences are real. */
export const seeingWorked = {
  'smallest-real-difference': smallestRealDifference,
  'bell-ringer': bellRinger,
} as const;
