import {
  absorptionRatio,
  layerOver,
  layerTransmittance,
  thickReflectance,
} from '#lib/colour/layers/kubelkaMunk.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { recipeCount } from '#lib/colour/recipe/recipes.ts';
import { baselineAbsorption, bloodAbsorption, melanosomeAbsorption } from '#lib/colour/layers/tissue.ts';
import { ninetyOf } from '#lib/colour/healing/uncertainHealing.ts';
import { drawFrom, drawNormal } from '#lib/quantities/seed.ts';
import { haemoglobin } from '#lib/tables/haemoglobin.ts';
import type { Check } from '../check.ts';

const band = (nm: number) => (nm - 380) / 10;
const layer = { k: 0.25, s: 1 };
const byHand = { kind: 'hand', unit: '1' } as const;

/** The upper twentieth of many log-normal doses of spread 0.25, median 1. */
function upperDose(): number {
  const draw = drawFrom(2026);
  return ninetyOf(Array.from({ length: 60_000 }, () => Math.exp(0.25 * drawNormal(draw))))[1];
}

const extinction = (nm: number, which: 'withOxygen' | 'withoutOxygen', printed: number): Check => ({
  id: `haemoglobin-${nm}-${which === 'withOxygen' ? 'with' : 'without'}-oxygen`,
  kind: 'table',
  source: 'prahl-table',
  where: 'table, one row a wavelength',
  what: `molar extinction of haemoglobin ${which === 'withOxygen' ? 'with' : 'without'} oxygen at ${nm} nm`,
  printed,
  unit: '1',
  tolerance: 0.05,
  because: 'we keep one decimal',
  ours: (factor = 1) => factor * (haemoglobin[which][band(nm)] ?? Number.NaN),
});

/** Layers of pigment, what skin absorbs, and counts. */
export const layerChecks = [
  {
    ...byHand,
    id: 'km-ratio-tenth',
    source: 'measure-kubelka-munk',
    where: 'formula (1 − R)² ÷ 2R',
    what: 'absorption over scattering of a reflectance of 0.1: 0.81 ÷ 0.2',
    printed: 4.05,
    tolerance: 1e-9,
    because: 'exact',
    ours: (factor = 1) => factor * absorptionRatio(0.1),
  },
  {
    ...byHand,
    id: 'km-thick-quarter',
    source: 'measure-kubelka-munk',
    where: 'formula (1 − R)² ÷ 2R',
    what: 'the reflectance whose ratio is 0.25',
    printed: 0.5,
    tolerance: 1e-9,
    because: 'exact: 0.25 ÷ 1',
    ours: (factor = 1) => factor * thickReflectance(0.25),
  },
  {
    ...byHand,
    id: 'km-layer-alone',
    source: 'layer-shader',
    where: 'reflectance and transmittance of one layer',
    what: 'reflectance of a layer K 0.25, S 1: sinh 0.75 ÷ (1.25 sinh 0.75 + 0.75 cosh 0.75)',
    printed: 0.4113829,
    tolerance: 1e-7,
    because: 'worked out to eight digits',
    ours: (factor = 1) => factor * layerOver(layer, 0),
  },
  {
    ...byHand,
    id: 'km-layer-through',
    source: 'layer-shader',
    where: 'reflectance and transmittance of one layer',
    what: 'what it lets through: 0.75 ÷ 1.99890838',
    printed: 0.37520479,
    tolerance: 1e-7,
    because: 'worked out to eight digits',
    ours: (factor = 1) => factor * layerTransmittance(layer),
  },
  {
    ...byHand,
    id: 'km-layer-over',
    source: 'layer-shader',
    where: 'a layer over something',
    what: 'the same layer over a reflectance of 0.3: 0.4113829 + 0.3 × 0.37520479² ÷ (1 − 0.3 × 0.4113829)',
    printed: 0.45956258,
    tolerance: 1e-7,
    because: 'worked out to eight digits',
    ours: (factor = 1) => factor * layerOver(layer, 0.3),
  },
  extinction(500, 'withOxygen', 20932.8),
  extinction(560, 'withOxygen', 32613.2),
  extinction(600, 'withoutOxygen', 14677.2),
  extinction(700, 'withoutOxygen', 1794.28),
  {
    ...byHand,
    id: 'blood-at-560',
    source: 'prahl-moaveni',
    where: 'formula 2.303 ε x ÷ 66,500',
    what: 'whole blood at 560 nm, three quarters with oxygen: 2.303 × (0.75 × 32613.2 + 0.25 × 53788) × 150 ÷ 66,500',
    printed: 196.92,
    unit: 'cm⁻¹',
    tolerance: 0.2,
    because: 'ln 10 is 2.3026 with us',
    ours: (factor = 1) => factor * 10 * (bloodAbsorption[band(560)] ?? Number.NaN),
  },
  {
    ...byHand,
    id: 'bare-skin-at-500',
    source: 'jacques-1998',
    where: 'section 1.1: 0.244 + 85.3 exp(−(λ − 154)/66.2)',
    what: 'skin without melanin and blood at 500 nm',
    printed: 0.702,
    unit: 'cm⁻¹',
    tolerance: 0.001,
    because: 'worked out to three decimals',
    ours: (factor = 1) =>
      (factor * 10 * (baselineAbsorption[band(500)] ?? Number.NaN)) / modelValues.baselineTimes,
  },
  {
    ...byHand,
    id: 'melanosome-at-500',
    source: 'jacques-melanosome',
    where: '1.70 × 10¹² λ to the power −3.48',
    what: 'interior of a melanosome at 500 nm',
    printed: 688.7,
    unit: 'cm⁻¹',
    tolerance: 1,
    because: 'worked out with logarithms',
    ours: (factor = 1) => factor * 10 * (melanosomeAbsorption[band(500)] ?? Number.NaN),
  },
  {
    ...byHand,
    id: 'surface-from-within',
    source: 'wang-2024',
    where: '−1.440 ÷ n² + 0.710 ÷ n + 0.668 + 0.0636 n',
    what: 'share of diffuse light thrown back within, refractive index 1.4',
    printed: 0.5295,
    tolerance: 0.001,
    because: 'we use two decimals',
    ours: (factor = 1) => factor * modelValues.surfaceInside,
  },
  {
    id: 'four-of-24-bottles',
    kind: 'table',
    source: 'oeis',
    where: 'A000332',
    what: 'recipes of four drops from four of 24 bottles',
    printed: 10626,
    unit: '1',
    tolerance: 0.5,
    because: 'a count',
    ours: (factor = 1) => factor * (recipeCount(24, 4, 4) - recipeCount(24, 3, 4)),
  },
  {
    id: 'four-of-12-bottles',
    kind: 'table',
    source: 'oeis',
    where: 'A000332',
    what: 'recipes of four drops from four of 12 bottles',
    printed: 495,
    unit: '1',
    tolerance: 0.5,
    because: 'a count',
    ours: (factor = 1) => factor * (recipeCount(12, 4, 4) - recipeCount(12, 3, 4)),
  },
  {
    ...byHand,
    id: 'log-normal-upper-twentieth',
    source: 'nist-t-table',
    where: 'last row, infinite degrees of freedom: 1.645',
    what: 'dose that one healing in twenty exceeds, spread 0.25: exp(0.25 × 1.645)',
    printed: 1.5087,
    tolerance: 0.008,
    because: 'two standard errors over 60,000 draws',
    ours: (factor = 1) => factor * upperDose(),
  },
] as const satisfies readonly Check[];
