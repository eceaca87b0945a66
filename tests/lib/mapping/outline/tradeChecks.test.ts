import { describe, expect, it } from 'vitest';
import { tradeCheckCount, tradeChecks } from '#lib/mapping/outline/tradeChecks.ts';
import { at } from './brows.ts';
import { face, brow, choices, checked, find } from './tradePair.ts';

describe('trade checks of two brows', () => {
  it('[hand] two equal brows: every difference 0 and not shown; the tails keep every limit; fronts on the anchor', () => {
    const report = checked();
    const equal = report.checks.filter(({ kind }) => kind === 'equal');
    expect(equal.map(({ id }) => id)).toEqual([
      'fronts-equally-far',
      'level-frontLower',
      'level-frontTop',
      'level-archTop',
      'level-archLower',
      'level-tail',
      'lengths',
      'thickness',
      'thickness',
    ]);
    for (const { value, verdict } of equal) expect([value.value, verdict]).toEqual([0, 'not-shown']);
    expect(find(report, 'front-on-anchor', 'right')).toMatchObject({
      kind: 'anchor',
      side: 'right',
      verdict: 'not-shown',
    });
    // 2 over the front's lower edge, 5 under its top, 4 inside the line level (59 at 12 mm up), 3.2 the
    // shortest way.
    expect(find(report, 'tail-over-front-lower', 'right').value.value).toBe(2);
    expect(find(report, 'tail-under-front-top', 'left').value.value).toBe(5);
    expect(find(report, 'tail-inside-line', 'left').value.value).toBeCloseTo(3.2, 9);
    expect(report.checks.filter(({ kind }) => kind === 'limit').map(({ verdict }) => verdict)).toEqual([
      'keeps',
      'keeps',
      'keeps',
      'keeps',
      'keeps',
      'keeps',
    ]);
  });
  it('[hand] each check sees its own change, left minus right', () => {
    const report = checked(
      {},
      {
        frontLower: at(17.5, 12),
        frontTop: at(18, 16),
        archTop: at(40, 23),
        archLower: at(39, 13.5),
        tail: at(58, 9),
      },
    );
    const values = [
      'fronts-equally-far',
      'level-frontLower',
      'level-frontTop',
      'level-archTop',
      'level-archLower',
      'level-tail',
      'lengths',
    ] as const;
    expect(values.map((id) => Number(find(report, id).value.value.toFixed(9)))).toEqual([
      1.5, 2, -1, 2, -1.5, -3, 1.5,
    ]);
    expect(find(report, 'level-archTop').verdict).toBe('differs');
    expect(find(report, 'front-on-anchor', 'left')).toMatchObject({
      verdict: 'differs',
      value: { value: 1.5 },
    });
    expect(find(report, 'tail-over-front-lower', 'left')).toMatchObject({
      verdict: 'breaks',
      value: { value: -3 },
    });
    expect(find(report, 'tail-over-front-lower', 'right').verdict).toBe('keeps');
  });
  it('[hand] the front is where it is said to be measured: at its upper mark 17, one mm out of the anchor, 38 mm long', () => {
    const report = checked({}, { frontTop: at(19, 17) }, { edge: 'frontTop' });
    expect(find(report, 'front-on-anchor', 'right').value.value).toBe(1);
    expect(find(report, 'fronts-equally-far').value.value).toBe(2);
    expect(find(report, 'lengths').value.value).toBe(-2);
    expect(find(checked(), 'front-on-anchor', 'right').value.value).toBe(0);
  });
  it.each([
    ['inner-corner', 16, Math.sqrt(1 + 0.389 ** 2 + 0.5)],
    ['nose-wing', 20, Math.sqrt(1 + 0.389 ** 2 + 0.5)],
    ['nostril-middle', 12, Math.sqrt(1 + 0.389 ** 2 + 0.18)],
    ['own', 18, Math.sqrt(1 + 0.389 ** 2)],
  ] as const)(
    '[hand] on %s at %d mm: off by what is left, half-width 2 · 0.3 · the parts',
    (anchor, anchorMm, share) => {
      const { value } = find(checked({}, {}, { anchor }), 'front-on-anchor', 'left');
      expect(value.value).toBeCloseTo(16 - anchorMm, 12);
      expect(value.hi - value.value).toBeCloseTo(0.6 * share, 12);
    },
  );
  it('[hand] half-width of two arches 80 mm apart: 0.6 · √(2 + (0.0071 · 80)²)', () => {
    const { value } = find(checked(), 'level-archTop');
    expect(value.hi).toBeCloseTo(0.6 * Math.sqrt(2 + 0.568 ** 2), 12);
    expect(value.k).toBe(2);
  });
  it('[hand] counted together: 2 + 5 heights + stations + 4 a side', () => {
    expect(tradeCheckCount(4)).toBe(19);
    expect(checked().checks).toHaveLength(tradeCheckCount(2));
  });
  it('[hand] without an outline on one side its stations say why and make no check; the rest stands', () => {
    const report = checked({ archTop: at(40, 14) });
    expect(report.outlines.right).toEqual({ ok: false, reason: 'upper-edge-under-lower-edge' });
    expect(report.stations[0]).toMatchObject({
      share: 0.25,
      right: { ok: false, reason: 'upper-edge-under-lower-edge' },
      left: { ok: true },
      difference: undefined,
    });
    expect(report.checks.filter(({ id }) => id === 'thickness')).toEqual([]);
    expect(report.checks).toHaveLength(tradeCheckCount(0));
  });
  it('[hand] an outer corner below its wing is refused', () => {
    expect(
      tradeChecks(
        { right: { ...face, ...brow, outerCorner: at(50, -41) }, left: { ...face, ...brow } },
        choices,
      ),
    ).toEqual({ ok: false, reason: 'corner-not-above-wing' });
  });
});
