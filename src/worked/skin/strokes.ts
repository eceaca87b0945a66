import { shareApart } from '#lib/colour/coverage/coverage.ts';
import { strokeValues } from '#lib/colour/numbers/strokes.ts';
import { worked } from '../worked.ts';

/** The violinist, invented: her strokes, her brow's area, and what she wants healed. */
const strokesForHealed = worked({
  id: 'strokes-for-healed',
  inputs: {
    count: 60,
    lengthMm: 8,
    widthMm: 0.18,
    spreadMm: strokeValues.strokeSpreadMm,
    areaMm2: 287.6,
    wanted: 45,
  },
  run: ({ count, lengthMm, widthMm, spreadMm, areaMm2, wanted }) => {
    const strokes = { count, lengthMm, widthMm, areaMm2 };
    const wanting = (wanted / 100) * areaMm2;
    return {
      inked: count * lengthMm * widthMm,
      fresh: 100 * shareApart(strokes),
      inkedWide: count * lengthMm * spreadMm,
      spread: 100 * shareApart({ ...strokes, widthMm: spreadMm }),
      oneWide: lengthMm * spreadMm,
      wanting,
      answer: wanting / (lengthMm * spreadMm),
      freshThen: 100 * shareApart({ ...strokes, count: Math.floor(wanting / (lengthMm * spreadMm)) }),
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['stroke-spread-mm', 'lines-widen'],
});

export const strokesWorked = { 'strokes-for-healed': strokesForHealed } as const;
