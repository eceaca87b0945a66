import { describe, expect, test } from 'vitest';
import { holding, nearest } from '#lib/mapping/plan/nearest.ts';
import { rowValue, type Holder, type Row } from '#lib/mapping/plan/row.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { wholeProgramme } from './wholeProgramme.ts';

const holder = (uMm: number): Holder => ({ kind: 'old-work', side: 'left', edge: 'upper', uMm });

describe('the nearest unknowns', () => {
  const draw = drawFrom(17);
  const between = (lo: number, hi: number) => lo + (hi - lo) * draw();
  /** Rows that some point keeps with room to spare, and a target that breaks some of them. */
  const drawn = () => {
    const inside = Array.from({ length: 5 }, () => between(-2, 2));
    const rows = Array.from({ length: 40 }, (_, i): Row => {
      const coefficients = inside.map(() => between(-1, 1));
      return { coefficients, atLeast: rowValue(coefficients, inside) - between(0.01, 1), holder: holder(i) };
    });
    return {
      rows,
      target: inside.map((value) => value + between(-6, 6)),
      weights: inside.map(() => between(0.5, 3)),
    };
  };

  test('[library] 100 draws of 40 rows: the same answer, the same multipliers as the whole programme, whatever it begins with', () => {
    let held = 0;
    for (let i = 0; i < 100; i++) {
      const { rows, target, weights } = drawn();
      const whole = wholeProgramme(target, weights, rows);
      const first = rows.flatMap((_, at) => (draw() < 0.2 ? [at] : []));
      for (const found of [
        nearest(target, weights, rows),
        nearest(target, weights, rows, first),
        nearest(
          target,
          weights,
          rows,
          rows.map((_, at) => at),
        ),
      ]) {
        if (!found.ok) throw new Error(found.reason);
        found.unknowns.forEach((value, k) =>
          expect(Math.abs(value - (whole.solution[k + 1] ?? NaN))).toBeLessThan(1e-8),
        );
        found.pulls.forEach((pull, at) =>
          expect(Math.abs(pull - (whole.Lagrangian[at + 1] ?? NaN))).toBeLessThan(1e-6),
        );
        const holders = rows.flatMap(({ holder: one }, at) =>
          (whole.Lagrangian[at + 1] ?? 0) > 1e-6 && one ? [one] : [],
        );
        expect(found.heldBy).toEqual(holders);
        expect(holding(found)).toEqual(
          rows.flatMap((_, at) => ((whole.Lagrangian[at + 1] ?? 0) > 1e-6 ? [at] : [])),
        );
      }
      held += whole.Lagrangian.filter((pull) => pull > 1e-6).length;
    }
    expect(held).toBeGreaterThan(200);
  });

  test('[library] rows that contradict are told at once or not at all', () => {
    for (let i = 0; i < 20; i++) {
      const { rows, target, weights } = drawn();
      const [one] = rows;
      if (!one) throw new Error('rows');
      const against: Row = {
        coefficients: one.coefficients.map((value) => -value),
        atLeast: -one.atLeast + 0.01,
      };
      for (const first of [[], [0], [40, 0], rows.map((_, at) => at)]) {
        const found = nearest(target, weights, [...rows, against], first);
        if (found.ok) throw new Error('a row and its contrary');
        // Where even the rows it was told to begin with contradict, it begins afresh.
        if (first.includes(40)) expect(found).toEqual(nearest(target, weights, [...rows, against]));
      }
    }
  });

  test('[hand] a row and its contrary; a thousandth of a thousandth mm is no contradiction', () => {
    const above = (mm: number): Row => ({ coefficients: [1], atLeast: mm });
    const below = (mm: number): Row => ({ coefficients: [-1], atLeast: -mm });
    // From 0 the first row is missed, then held; the second one is kept until then.
    expect(nearest([0], [1], [above(1), below(0.9), below(5)])).toEqual({
      ok: false,
      reason: 'rows-contradict',
    });
    expect(nearest([0], [1], [above(1), below(1 - 1.1e-6)]).ok).toBe(false);
    const thin = nearest([0], [1], [above(1), below(1 - 0.9e-6)]);
    expect(thin.ok && thin.unknowns[0]).toBeCloseTo(1, 5);
  });

  test('[hand] what holds: rows pulled at all', () => {
    expect(holding({ ok: true, unknowns: [], heldBy: [], pulls: [0, 2, 0, 1e-9] })).toEqual([1, 3]);
  });
});
