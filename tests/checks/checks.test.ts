import { describe, expect, it } from 'vitest';
import { holds, type Check } from '#checks/check.ts';
import { colourChecks } from '#checks/colour.ts';
import { checkRows, checks, distinctTables } from '#checks/index.ts';
import { mappingChecks } from '#checks/mapping.ts';
import { bibliography } from '#lib/evidence/bibliography.ts';

const named = (kind: Check['kind']) =>
  checks.filter((check) => check.kind === kind).map((check) => [check.id, check] as const);
const gap = (check: Check) => Math.abs(check.ours() - check.printed);

describe('printed values', () => {
  it.each(named('table'))('[table] %s', (_, check) => {
    expect(gap(check), `${check.what}: ours ${check.ours()}, printed ${check.printed}`).toBeLessThanOrEqual(
      check.tolerance,
    );
  });
  it.each(named('hand'))('[hand] %s', (_, check) => {
    expect(gap(check), `${check.what}: ours ${check.ours()}, by hand ${check.printed}`).toBeLessThanOrEqual(
      check.tolerance,
    );
  });
  it.each(named('library'))('[library] %s', (_, check) => {
    expect(gap(check), `${check.what}: ours ${check.ours()}, elsewhere ${check.printed}`).toBeLessThanOrEqual(
      check.tolerance,
    );
  });
  it.each(checks.map((check) => [check.id, check] as const))(
    '[property] %s turns red when ours is 1 % off',
    (_, check) => {
      expect(holds(check, 1.01)).toBe(false);
      expect(holds(check, 0.99)).toBe(false);
    },
  );
});

describe('all checks', () => {
  it('[property] have ids of their own, a reason and a source that was opened', () => {
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
    for (const { source, because, where } of checks) {
      expect(bibliography[source].read).not.toBe('none');
      expect(because.length).toBeGreaterThan(4);
      expect(where.length).toBeGreaterThan(3);
    }
  });
  it.each([
    ['mapping', mappingChecks],
    ['colour', colourChecks],
  ] as const)(
    '[property] of %s come from at least 40 tables and 12 sources; rows of one table count once',
    (_, rows) => {
      expect(distinctTables(rows)).toBeGreaterThanOrEqual(40);
      expect(new Set(rows.map(({ source }) => source)).size).toBeGreaterThanOrEqual(12);
    },
  );
  it('[hand] three rows of two tables are two', () => {
    const [check] = checks;
    if (!check) throw new Error('There are no checks.');
    const rows = ['sines: row 1', 'sines: row 5', 'tangents'].map((where) => ({ ...check, where }));
    expect(distinctTables(rows)).toBe(2);
  });
  it('[property] give the page printed, ours and difference', () => {
    for (const { value, printed, difference, holds: good } of checkRows()) {
      expect(difference).toBe(value - printed);
      expect(good).toBe(true);
    }
  });
});
