import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { worked } from '../worked.ts';

/** The library's midline of pairs read off one ruler, [right, left] in millimetres from its end. */
function middleMm(...pairs: readonly (readonly [number, number])[]): number {
  const fit = fitMidline(
    pairs.map(([right, left]) => ({ right: { xMm: right, yMm: 0 }, left: { xMm: left, yMm: 0 } })),
  );
  if (!fit.ok) throw new Error('The worked example has no midline: its marks lie on one point.');
  return fit.line.offsetMm;
}

/** Invented readings: three pairs that agree and a nose that leans. */
const midlineByPairMiddles = worked({
  id: 'midline-by-pair-middles',
  inputs: {
    innerRight: 41.4,
    innerLeft: 73.6,
    pupilRight: 26.3,
    pupilLeft: 88.9,
    outerRight: 12.1,
    outerLeft: 102.9,
    wingRight: 43.6,
    wingLeft: 81.0,
  },
  run: ({ innerRight, innerLeft, pupilRight, pupilLeft, outerRight, outerLeft, wingRight, wingLeft }) => {
    const answer = middleMm([innerRight, innerLeft], [pupilRight, pupilLeft], [outerRight, outerLeft]);
    const wingMiddle = middleMm([wingRight, wingLeft]);
    return {
      innerMiddle: middleMm([innerRight, innerLeft]),
      pupilMiddle: middleMm([pupilRight, pupilLeft]),
      outerMiddle: middleMm([outerRight, outerLeft]),
      wingMiddle,
      noseOff: wingMiddle - answer,
      answer,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
});

/** Worked examples about the midline. */
export const midlineWorked = {
  'midline-by-pair-middles': midlineByPairMiddles,
} as const;
