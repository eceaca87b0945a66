import { assumed, computed, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';
import { modelValues } from '../numbers/model.ts';

const reviewed = '2026-11-25';

/** What the model of pigment in skin computes with. */
export const opticsFacts = {
  'blood-haemoglobin': {
    value: modelValues.bloodGramsPerLitre,
    unit: 'g/l',
    backing: published(
      'prahl-moaveni',
      'below the formulas',
      'A typical value of x for whole blood is x=150 g Hb/liter.',
    ),
    reviewed,
  },
  'haemoglobin-molar-mass': {
    value: modelValues.haemoglobinGramsPerMol,
    unit: 'g/mol',
    backing: published(
      'prahl-moaveni',
      'below the formulas',
      'using 66,500 as the gram molecular weight of hemoglobin',
    ),
    reviewed,
    caveat: 'The same author uses 64,500 elsewhere.',
  },
  'skin-baseline': {
    value: modelValues.baselinePerCm,
    unit: 'cm⁻¹',
    backing: published(
      'jacques-1998',
      'section 1.1',
      'mua.skinbaseline = 0.244 + 85.3exp(-(nm - 154)/66.2) [cm-1]',
    ),
    reviewed,
    caveat: 'Bloodless rat skin; the constant part of a curve that rises towards blue.',
  },
  'melanosome-power': {
    value: modelValues.melanosomePower,
    unit: '1',
    backing: published('jacques-melanosome', 'bottom of the page', 'µa = 1.70x1012 nm-3.48 [cm-1] for skin'),
    reviewed,
    caveat: 'The amount of melanin in a melanosome varies ten-fold; the shape is steadier.',
  },
  'melanosome-at-500-nm': {
    value: 689,
    unit: 'cm⁻¹',
    backing: computed('1.70 × 10¹² × 500 to the power −3.48', 'melanosome-power'),
    reviewed,
  },
  'skin-scattering-at-500-nm': {
    value: modelValues.scatteringPerCm,
    unit: 'cm⁻¹',
    backing: assumed('Mean of eight studies of skin in a review; the table itself was not read again here.'),
    reviewed,
  },
  'surface-outside': {
    value: modelValues.surfaceOutside,
    unit: '1',
    backing: computed('Straight onto a smooth surface of refractive index 1.4: (0.4/2.4)²'),
    reviewed,
  },
  'surface-inside': {
    value: modelValues.surfaceInside,
    unit: '1',
    backing: assumed(
      'Diffuse light from within a body of refractive index 1.4; the value in use differs by a few hundredths.',
    ),
    reviewed,
  },
  'epidermis-mm': {
    value: modelValues.epidermisMm,
    unit: 'mm',
    backing: assumed('Thickness above the pigment in the model. Methods of measuring it differ four-fold.'),
    range: [0.03, 0.22],
    reviewed,
  },
  'blood-saturation': {
    value: modelValues.saturation,
    unit: '1',
    backing: assumed('Share of the blood in the skin that carries oxygen.'),
    reviewed,
  },
  'veil-share': {
    value: modelValues.veilShare,
    unit: '1',
    backing: assumed('Share of textbook backscatter above the pigment: the first number to calibrate.'),
    range: [modelValues.veilShareLo, modelValues.veilShareHi],
    reviewed,
  },
  'model-depth-mm': {
    value: modelValues.depthMm,
    unit: 'mm',
    backing: assumed('Depth of the pigment in the model. It is not a needle length.'),
    range: [0.05, 0.3],
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;
