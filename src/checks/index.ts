import { rowOf, type Check, type CheckRow } from './check.ts';
import { colourChecks } from './colour.ts';
import { mappingChecks } from './mapping.ts';

/** Every outside check of the site. */
export const checks: readonly Check[] = [...mappingChecks, ...colourChecks];

/** Every check worked out: what the Evidence page prints. */
export function checkRows(): readonly CheckRow[] {
  return checks.map(rowOf);
}

/**
 * Rows of one table count once: checks by source and place. A place names its table, then, after a colon, the
 * row.
 */
export function distinctTables(rows: readonly Check[] = checks): number {
  return new Set(rows.map(({ source, where }) => `${source} · ${where.split(':', 1).join()}`)).size;
}
