import { coverTheOldShape } from '#calculators/coverTheOldShape.ts';
import type { CoverState } from '#calculators/coverFields.ts';
import { coverPaths, type CoverPaths } from '#components/pictures/coverPaths.ts';
import { coverCaution, coverSays, type CoverSeen } from '#words/coverTheOldShape.ts';

/**
 * A plan with its sentences and its drawing: all are made at build for the first state and fetched together
 * at the first change.
 */
export type CoverTold = Readonly<{
  cover: CoverSeen;
  says: Readonly<{ answer: string; doubt: string }>;
  caution: string | undefined;
  paths: CoverPaths;
}>;

/** Works out one state and says it. */
export function tellCover(state: CoverState): CoverTold {
  const cover = coverTheOldShape.solve(state);
  return { cover, says: coverSays(cover), caution: coverCaution(cover), paths: coverPaths(state, cover) };
}
