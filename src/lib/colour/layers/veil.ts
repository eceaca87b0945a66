import { forBands, type Spectrum } from '../spectrum/bands.ts';
import { absorptionRatio, clearLayer, layerOver, thickReflectance, type Layer } from './kubelkaMunk.ts';
import { modelValues as m } from '../numbers/model.ts';
import { baselineAbsorption, bloodAbsorption, melanosomeAbsorption, reducedScattering } from './tissue.ts';

/**
 * What stands between the eye and the pigment, as shares of volume: fitted to one skin, for the model only.
 * Never shown.
 */
export type SkinFractions = Readonly<{ melanosomes: number; blood: number }>;
export type LayerSpectrum = readonly Layer[];

const of = (spectrum: Spectrum, band: number) => spectrum[band] ?? 0;

/**
 * The layer above pigment that lies `depthMm` under the surface: the epidermis with its melanin, then dermis
 * with blood.
 * K = 2 μa. Textbook S = ¾ μs′ would let no black fall below L* 53 under 0.15 mm; thin layers scatter mostly
 * forward, so only the share `veilShare` of it counts (assumed, the first number to calibrate).
 */
export function veil(
  { melanosomes, blood }: SkinFractions,
  depthMm: number,
  veilShare: number = m.veilShare,
): LayerSpectrum {
  const epidermis = Math.min(depthMm, m.epidermisMm);
  const dermis = Math.max(0, depthMm - m.epidermisMm);
  return Array.from(reducedScattering, (scattering, band) => ({
    k:
      2 *
      (epidermis * melanosomes * of(melanosomeAbsorption, band) +
        dermis * blood * of(bloodAbsorption, band) +
        depthMm * of(baselineAbsorption, band)),
    s: depthMm * veilShare * 0.75 * scattering,
  }));
}

/**
 * Bare skin from its fractions by physics alone: an epidermis over dermis without end. Good for the veil, not
 * for a colour.
 */
export function plainSkin(fractions: SkinFractions): Spectrum {
  const above = veil(fractions, m.epidermisMm);
  return forBands((band) => {
    const absorption = 2 * (fractions.blood * of(bloodAbsorption, band) + of(baselineAbsorption, band));
    const dermis = thickReflectance(absorption / (0.75 * of(reducedScattering, band)));
    return layerOver(above[band] ?? clearLayer, dermis);
  });
}

const rounds = 40;
const nudge = 1e-4;

/**
 * The fractions whose plain skin comes nearest to a skin's reflectance within its surface: least squares on
 * ln(K/S) over all bands, by Gauss and Newton's method on their logarithms, each step at most a factor e.
 */
export function fitFractions(inside: Spectrum): SkinFractions {
  const wanted = inside.map((value) => Math.log(absorptionRatio(value)));
  const missOf = (x: number, y: number) =>
    plainSkin({ melanosomes: Math.exp(x), blood: Math.exp(y) }).map(
      (value, band) => Math.log(absorptionRatio(value)) - of(wanted, band),
    );
  let [x, y] = [Math.log(0.03), Math.log(0.01)];
  for (let round = 0; round < rounds; round++) {
    const miss = missOf(x, y);
    const slopesX = missOf(x + nudge, y).map((value, band) => (value - of(miss, band)) / nudge);
    const slopesY = missOf(x, y + nudge).map((value, band) => (value - of(miss, band)) / nudge);
    const sum = (one: Spectrum, other: Spectrum) =>
      one.reduce((total, value, band) => total + value * of(other, band), 0);
    const [xx, xy, yy] = [sum(slopesX, slopesX), sum(slopesX, slopesY), sum(slopesY, slopesY)];
    const determinant = xx * yy - xy * xy;
    if (!(determinant > 0)) break;
    const moveX = (yy * sum(slopesX, miss) - xy * sum(slopesY, miss)) / determinant;
    const moveY = (xx * sum(slopesY, miss) - xy * sum(slopesX, miss)) / determinant;
    const shrink = Math.max(1, Math.abs(moveX), Math.abs(moveY));
    [x, y] = [Math.min(0, Math.max(-9, x - moveX / shrink)), Math.min(0, Math.max(-12, y - moveY / shrink))];
    if (Math.abs(moveX) + Math.abs(moveY) < 1e-9) break;
  }
  return { melanosomes: Math.exp(x), blood: Math.exp(y) };
}
