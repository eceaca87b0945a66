import { rowOf, type Check, type CheckRow } from './check.ts';
import { colourChecks } from './colour.ts';
import { mappingChecks } from './mapping.ts';

/** Every outside check of the site. */
export const checks: readonly Check[] = [...mappingChecks, ...colourChecks];

/** Every check worked out: what the Evidence page prints. */
export function checkRows(): readonly CheckRow[] {
  return checks.map(rowOf);
}

/** Rows of one table count once: checks by source and place. */
export function distinctTables(rows: readonly Check[] = checks): number {
  return new Set(rows.map(({ source, where, kind }) => `${source} · ${where} · ${kind}`)).size;
}
