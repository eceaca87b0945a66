import { mappingValues } from '#lib/mapping/numbers/values.ts';
import { sizeFacts } from '#lib/mapping/facts/sizes.ts';
import { mmPerUnit, scaleDoubtMm } from '#lib/mapping/pose/irisScale.ts';
import { worked } from '../worked.ts';

/** Invented readings of one picture, in its own dots; the iris's width and spread are published. */
const scaleByIris = worked({
  id: 'scale-by-iris',
  inputs: {
    irisDots: 195,
    differenceDots: 25,
    lengthDots: 750,
    irisMm: mappingValues['iris-width-mm'],
    spreadMm: sizeFacts['iris-width-spread-mm'].value,
  },
  run: ({ irisDots, differenceDots, lengthDots, irisMm, spreadMm }) => {
    const dotMm = mmPerUnit(irisDots, { irisMm, spreadMm });
    const answer = differenceDots * dotMm;
    const lengthMm = lengthDots * dotMm;
    return {
      dotMm,
      lengthMm,
      differenceDoubt: scaleDoubtMm(answer, { irisMm, spreadMm }, 2),
      lengthDoubt: scaleDoubtMm(lengthMm, { irisMm, spreadMm }, 2),
      answer,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['iris-width-mm', 'iris-width-spread-mm'],
});

/** Worked examples about pictures. */
export const picturesWorked = {
  'scale-by-iris': scaleByIris,
} as const;
