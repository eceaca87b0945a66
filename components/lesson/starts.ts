import { tellCover } from '#components/calculator/cover/coverTold.ts';
import type { FaceReading, NoFaceReading, ShownReading } from '#lib/mapping/compare/readFace.ts';
import { calculators } from '#calculators/index.ts';
import { startState } from '#calculators/startState.ts';
import { shortened } from './shortened.ts';

/** Works something out when it is first asked for, and keeps it: the pages of one build share it. */
function once<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= shortened(make()));
}

/** A reading without the rows that only a comparison of two needs: they are the most of it. */
function shownOf(reading: FaceReading | NoFaceReading): ShownReading | NoFaceReading {
  if (!reading.ok) return reading;
  const { rows: _, ...shown } = reading;
  return shown;
}

/** What the slower calculators say of their first state. A lesson and the calculator's own page both open on it. */
export const starts = {
  'midline-and-sides': once(() =>
    shownOf(calculators['midline-and-sides'].solve(startState(calculators['midline-and-sides']))),
  ),
  'mix-by-drops': once(() => calculators['mix-by-drops'].solve(startState(calculators['mix-by-drops']))),
  'cover-the-old-shape': once(() => tellCover(startState(calculators['cover-the-old-shape']))),
  'find-a-recipe': once(() => calculators['find-a-recipe'].solve(startState(calculators['find-a-recipe']))),
  'why-it-healed-this-way': once(() =>
    calculators['why-it-healed-this-way'].solve(startState(calculators['why-it-healed-this-way'])),
  ),
  'front-and-tail': once(() =>
    calculators['front-and-tail'].solve(startState(calculators['front-and-tail'])),
  ),
  'outline-and-cover': once(() =>
    calculators['outline-and-cover'].solve(startState(calculators['outline-and-cover'])),
  ),
} as const;
