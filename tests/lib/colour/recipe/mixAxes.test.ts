import { expect, test } from 'vitest';
import { bottleOf, bottles, type Bottle } from '#lib/colour/pigment/bottles.ts';
import { mixLayer, pigmentIds, pigmentLayers, type PigmentId } from '#lib/colour/pigment/pigments.ts';
import { bandOrder, bandRows } from '#lib/colour/recipe/bandRows.ts';
import { mixAxes, pigmentMix } from '#lib/colour/recipe/mixAxes.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { foldedWeights } from '#lib/tables/foldedWeights.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const rows = bandRows({ skin, setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 } });
const axesOf = (some: readonly Bottle[], cells: number) =>
  mixAxes({ bottles: some, ageing: startAgeing }, rows, cells);

/**
 * How far two pigments lie apart in K and S at six weeks, weighted by what each band adds to Y: band by band,
 * in the order of wavelengths.
 */
function apart(one: PigmentId, other: PigmentId): number {
  const left = (id: PigmentId) => startAgeing[id].keptAtSixWeeks;
  return foldedWeights.D65.y.reduce((sum, weight, band) => {
    const [first, second] = [pigmentLayers[one][band], pigmentLayers[other][band]];
    if (!first || !second) throw new Error('no such band');
    return (
      sum +
      weight *
        (Math.abs(first.k * left(one) - second.k * left(other)) +
          Math.abs(first.s * left(one) - second.s * left(other)))
    );
  }, 0);
}

test.each([
  ['the palette', bottles],
  ['four of it', bottles.slice(1, 5)],
  ['three pigments', bottles.slice(5, 9)],
] as const)(
  '[property] slots go with the span of a share times how far its pigment moves K and S; left out is the one against which the others move least: %s',
  (_, some) => {
    const spanOf = (id: PigmentId) =>
      Math.max(...some.map(({ shares }) => shares[id])) - Math.min(...some.map(({ shares }) => shares[id]));
    const varied = pigmentIds.filter((id) => spanOf(id) > 0);
    const all = varied.map((rest) => varied.reduce((sum, id) => sum + spanOf(id) * apart(id, rest), 0));
    const { axes, rest } = axesOf(some, 1e12);
    expect(rest).toBe(varied[all.indexOf(Math.min(...all))]);
    expect(axes.map(({ pigment }) => pigment)).toEqual(varied.filter((id) => id !== rest));
    expect(axes.reduce((product, { steps }) => product * steps, 1) / 1e12).toBeCloseTo(1, 2);
    const perStrength = axes.map(({ pigment, steps }) => steps / (spanOf(pigment) * apart(pigment, rest)));
    for (const { pigment, lo, step, steps } of axes) {
      const shares = some.map((bottle) => bottle.shares[pigment]);
      expect([lo, lo + step * steps]).toEqual([Math.min(...shares), expect.closeTo(Math.max(...shares), 9)]);
    }
    for (const each of perStrength) expect(each / (perStrength[0] ?? NaN)).toBeCloseTo(1, 2);
  },
);

test('[hand] two pigments have one axis with all the cells; two slots at least; shares a hair apart have none', () => {
  const two = [
    bottleOf('white', { '77891': 1 }),
    bottleOf('half', { '77891': 1, '77499': 1 }),
    bottleOf('black', { '77891': 1, '77499': 3 }),
  ];
  // White from a quarter to all: either pigment moves the other alike, so the first of the list is left out.
  expect(axesOf(two, 100)).toEqual({
    axes: [{ pigment: '77499', lo: 0, step: 0.0075, steps: 100 }],
    rest: '77891',
  });
  expect(axesOf(two, 0.1).axes).toEqual([{ pigment: '77499', lo: 0, step: 0.375, steps: 2 }]);
  for (const { steps } of axesOf(bottles, 1).axes) expect(steps).toBe(2);
  const alike = [
    bottleOf('one', { '77491': 1, '77492': 1 }),
    bottleOf('other', { '77491': 1, '77492': 1 + 1e-12 }),
  ];
  expect(axesOf(alike, 100).axes).toEqual([]);
});

test('[hand] a pigment alone is its layer at unit dose, times what is left of it', () => {
  for (const id of pigmentIds) {
    const mix = pigmentMix(id, { '77891': 0.1, '77492': 0.2, '77491': 0.3, '77499': 0.4, '77266': 0.5 });
    const left = (1 + pigmentIds.indexOf(id)) / 10;
    bandOrder.forEach((band, i) => {
      expect(mix[2 * i]).toBeCloseTo(left * (pigmentLayers[id][band]?.k ?? NaN), 12);
      expect(mix[2 * i + 1]).toBeCloseTo(left * (pigmentLayers[id][band]?.s ?? NaN), 12);
    });
  }
  expect(mixLayer({ '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0 }, 1)[0]).toEqual({
    k: 0,
    s: 0,
  });
});
