import { differenceReachedByMm, shareAtLeast } from '#lib/mapping/compare/usualDifference.ts';
import { fewSeeMm, mostSeeMm, unequalMm, unequalRangeMm } from '#lib/mapping/numbers/start.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

export type BrowPlace = 'front' | 'middle' | 'tail';
export type UsualDifferenceState = Readonly<{ difference: number; place: BrowPlace }>;
export type UsualDifference = Readonly<{
  /** Mean size of the difference at this place, and the ends of its published 95 % interval, mm. */
  meanMm: number;
  /** Share of people at least this unequal: best figure, and with the mean at either end of its interval. */
  share: number;
  shareLo: number;
  shareHi: number;
  /** A hundred people in order, each by the difference that stands for them, mm. */
  hundredMm: readonly number[];
  band: 'few-see' | 'some-see' | 'most-see';
}>;

/** How usual a height difference between the two brows is, and who sees it. */
export const usualDifference: Calculator<UsualDifferenceState, UsualDifference> = {
  id: 'usual-difference',
  fields: {
    difference: numberField('difference', 2, { unit: 'mm', lo: 0, hi: 8, step: 0.1, decimals: 1 }),
    place: choiceField<BrowPlace>('place', 'middle', ['front', 'middle', 'tail']),
  },
  solve: ({ difference, place }) => {
    const meanMm = unequalMm[place];
    const [lowMm, highMm] = unequalRangeMm[place];
    return {
      meanMm,
      share: shareAtLeast(difference, meanMm),
      shareLo: shareAtLeast(difference, lowMm),
      shareHi: shareAtLeast(difference, highMm),
      hundredMm: Array.from({ length: 100 }, (_, i) => differenceReachedByMm((99.5 - i) / 100, meanMm)),
      band: difference >= mostSeeMm ? 'most-see' : difference > fewSeeMm ? 'some-see' : 'few-see',
    };
  },
};
