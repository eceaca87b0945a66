import type { FacePair } from '#lib/mapping/marks/markSet.ts';

/** The trade's names for the marks in pairs that a face has beside its brows. */
export const facePairWords: Readonly<Record<FacePair, string>> = {
  innerCorner: 'inner eye corner',
  outerCorner: 'outer eye corner',
  pupil: 'pupil',
  noseWing: 'nose wing',
};
