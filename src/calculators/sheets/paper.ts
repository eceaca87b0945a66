import { choiceField, numberField } from '../fields.ts';
import type { Field } from '../spec.ts';

export const papers = ['a4', 'letter'] as const;
export type Paper = (typeof papers)[number];

/** What every sheet asks: the paper, and what a ruler reads on the two printed bars, millimetres. */
export type PaperState = Readonly<{ paper: Paper; across: number; up: number }>;

/** The bars a ruler is laid on. */
export const barMm = 100;
/** A printer further off than this is set wrongly; the drawing would no longer fit on the sheet either. */
const measured = { unit: 'mm', lo: 90, hi: 110, step: 0.5, decimals: 1 } as const;

export const paperFields: { readonly [K in keyof PaperState]: Field<PaperState[K]> } = {
  paper: choiceField<Paper>('paper', 'a4', papers),
  across: numberField('across', barMm, measured),
  up: numberField('up', barMm, measured),
};

/**
 * How much larger to draw so that the paper comes out true: printers can be off by different shares along and
 * across.
 */
export type SheetScale = Readonly<{ across: number; up: number }>;

export function sheetScale({ across, up }: PaperState): SheetScale {
  return { across: barMm / across, up: barMm / up };
}
