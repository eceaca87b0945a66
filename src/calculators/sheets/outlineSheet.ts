import type { BrowsOnFace } from '#lib/mapping/outline/tradeChecks.ts';
import { browFields, type BrowPoints } from '../browFields.ts';
import { browsOnLevelFace } from '../browsOnLevelFace.ts';
import type { Calculator } from '../spec.ts';
import { paperFields, sheetScale, type PaperState, type SheetScale } from './paper.ts';

export type OutlineSheetState = BrowPoints & PaperState;
export type OutlineSheet = Readonly<{ scale: SheetScale; brows: BrowsOnFace }>;

/** Both brows at true size, from a link that holds their ten marks. */
export const outlineSheet: Calculator<OutlineSheetState, OutlineSheet> = {
  id: 'outline-sheet',
  fields: { ...browFields(), ...paperFields },
  solve: (state) => ({ scale: sheetScale(state), brows: browsOnLevelFace(state) }),
};
