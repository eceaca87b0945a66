import { haemoglobin } from '../../tables/haemoglobin.ts';
import { forBands, type Spectrum } from '../spectrum/bands.ts';
import { modelValues as m } from '../numbers/model.ts';

const perMm = (perCm: number) => perCm / 10;

/** Absorption inside a melanosome, mm⁻¹ (Jacques 1998: 1.70 × 10¹² λ^−3.48 cm⁻¹ for skin). */
export const melanosomeAbsorption: Spectrum = forBands((_, nm) =>
  perMm(m.melanosomeTimes * nm ** -m.melanosomePower),
);

/** Absorption of whole blood, mm⁻¹: ln 10 · ε · grams per litre / molar mass (Prahl's table). */
export const bloodAbsorption: Spectrum = forBands((band) => {
  const extinction =
    m.saturation * (haemoglobin.withOxygen[band] ?? 0) +
    (1 - m.saturation) * (haemoglobin.withoutOxygen[band] ?? 0);
  return perMm((Math.LN10 * extinction * m.bloodGramsPerLitre) / m.haemoglobinGramsPerMol);
});

/**
 * What skin without melanin and blood absorbs, mm⁻¹ (Jacques 1998: 0.244 + 85.3 exp(−(λ − 154)/66.2) cm⁻¹),
 * as the fits ask.
 */
export const baselineAbsorption: Spectrum = forBands((_, nm) =>
  perMm(m.baselineTimes * (m.baselinePerCm + m.baselineBluePerCm * Math.exp(-(nm - 154) / 66.2))),
);

/** Reduced scattering of skin, mm⁻¹ (Jacques 2013, mean of eight), as the fits ask. */
export const reducedScattering: Spectrum = forBands((_, nm) =>
  perMm(m.scatteringTimes * m.scatteringPerCm * (nm / 500) ** -m.scatteringPower),
);
