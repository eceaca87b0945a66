import type { PracticeLevel } from '#lib/face/disturbance.ts';
import { choiceField, numberField } from '../fields.ts';
import type { Calculator } from '../spec.ts';
import { paperFields, sheetScale, type PaperState, type SheetScale } from './paper.ts';

/** The levels of practice faces as an address writes them. */
export const sheetLevels = ['0', '1', '2', '3'] as const;
export type SheetLevel = (typeof sheetLevels)[number];

export type PracticeSheetState = PaperState & Readonly<{ seed: number; level: SheetLevel }>;
export type PracticeSheet = Readonly<{ scale: SheetScale; seed: number; level: PracticeLevel }>;

const levelOf = { '0': 0, '1': 1, '2': 2, '3': 3 } as const satisfies Readonly<
  Record<SheetLevel, PracticeLevel>
>;

/**
 * A practice face at true size: which face, on which paper, through which printer. Read and typed like a
 * calculator.
 */
export const practiceSheet: Calculator<PracticeSheetState, PracticeSheet> = {
  id: 'practice-sheet',
  fields: {
    ...paperFields,
    seed: numberField('seed', 1, { unit: '1', lo: 0, hi: 999, step: 1, decimals: 0 }),
    level: choiceField<SheetLevel>('level', '1', sheetLevels),
  },
  solve: (state) => ({ scale: sheetScale(state), seed: Math.round(state.seed), level: levelOf[state.level] }),
};
