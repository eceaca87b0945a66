import type { Subject } from '#lib/catalogue.ts';
import { rowOf, type Check, type CheckRow } from './check.ts';
import { colourChecks } from './colour.ts';
import { mappingChecks } from './mapping.ts';

/** Every outside check of the site. */
export const checks: readonly Check[] = [...mappingChecks, ...colourChecks];

/** The outside checks of each subject; advice and what others found out about learning compute nothing. */
export const checksOf = {
  mapping: mappingChecks,
  colour: colourChecks,
  firstAid: [],
  practice: [],
} as const satisfies Readonly<Record<Subject, readonly Check[]>>;

/** Checks worked out: what the Evidence pages print. */
export function checkRows(rows: readonly Check[] = checks): readonly CheckRow[] {
  return rows.map(rowOf);
}

/**
 * Rows of one table count once: checks by source and place. A place names its table, then, after a colon, the
 * row.
 */
export function distinctTables(rows: readonly Check[] = checks): number {
  return new Set(rows.map(({ source, where }) => `${source} · ${where.split(':', 1).join()}`)).size;
}
