import { foldedWeights } from '../../tables/foldedWeights.ts';
import type { Spectrum } from '../spectrum/bands.ts';
import { ciede2000 } from '../spaces/ciede2000.ts';
import { absorptionRatio, thickReflectance } from '../layers/kubelkaMunk.ts';
import type { Lab } from '../spaces/lab.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { pigmentLayers } from '../pigment/pigments.ts';
import { seenThroughSurface, withinSurface, type Surface } from '../layers/saunderson.ts';
import { smoothSpectrum } from '../spectrum/smoothSpectrum.ts';
import { swatchTrust } from '../pigment/swatchTrust.ts';
import type { LayerSpectrum } from '../layers/veil.ts';

/**
 * How a swatch was made and read: matt, without a surface; or a shiny film, its mirror shine counted in or
 * left out.
 */
export const finishes = ['matt', 'shine-in', 'shine-out'] as const;
export type Finish = (typeof finishes)[number];

/**
 * Two swatches of one bottle, both too thick to see through, and how the tint was mixed with the palette's
 * white.
 */
export type TwoSwatches = Readonly<{
  masstone: Lab;
  tint: Lab;
  drops: number;
  whiteDrops: number;
  finish: Finish;
}>;

export type SwatchReason = 'no-smooth-spectrum' | 'blue-or-violet' | 'darker-than-its-shine';
export type FromSwatches =
  | Readonly<{
      ok: true;
      layer: LayerSpectrum;
      /** Backscatter of one drop, where a drop of the white has `whiteScatter`. */
      scatter: number;
      /** ΔE00 between the tint given and the tint predicted. */
      tintMiss: number;
      isTested: boolean;
    }>
  | Readonly<{
      ok: false;
      at: 'masstone' | 'tint';
      reason: SwatchReason | 'tint-not-lighter' | 'tint-whiter-than-white' | 'tint-of-another-pigment';
    }>
  | Readonly<{ ok: false; at: 'drops'; reason: 'no-drops' }>;

/**
 * A dried film of refractive index 1.5: (0.5/2.5)² outside; inside, for diffuse light, the value in common
 * use.
 */
export const filmSurface: Surface = { outside: 0.04, inside: 0.6 };
/** A tint that misses by more was not mixed from this masstone (assumed). */
const mostTintMiss = 4;
export const whiteScatter = pigmentLayers['77891'][0]?.s ?? NaN;
/**
 * K/S of the palette's white as a swatch: smoothed like the others, so that a guess is compared with a guess.
 */
const smoothWhite = smoothSpectrum(
  spectrumToLab(pigmentLayers['77891'].map(({ k, s }) => thickReflectance(k / s))),
);
const whiteRatio: Spectrum = smoothWhite.ok ? smoothWhite.reflectance.map(absorptionRatio) : [];

/** What `withinSurface` is told of the shine of a film. */
const shineOf = (finish: Finish) => (finish === 'shine-in' ? 'included' : 'excluded');

/** The reflectance of a swatch without its surface, as a smooth guess. Blues and violets are refused. */
export function swatchReflectance(
  lab: Lab,
  finish: Finish,
): Readonly<{ ok: true; reflectance: Spectrum }> | Readonly<{ ok: false; reason: SwatchReason }> {
  if (swatchTrust(lab) === 'blue-or-violet') return { ok: false, reason: 'blue-or-violet' };
  const found = smoothSpectrum(lab);
  if (!found.ok || finish === 'matt') return found;
  const reflectance = found.reflectance.map((value) => withinSurface(value, filmSurface, shineOf(finish)));
  return reflectance.every((value) => value > 0)
    ? { ok: true, reflectance }
    : { ok: false, reason: 'darker-than-its-shine' };
}

/**
 * K and S of one drop of a school's own bottle from two swatches. Three numbers a swatch do not hold S band
 * by band, so one S is taken for all: the closed form of `scatterFromTint`, its numerator and its denominator
 * each summed over the bands by what they do to the tint's Y. The tint is then predicted back, and one that
 * does not come out near the tint given is refused.
 */
export function calibrateSwatches({ masstone, tint, drops, whiteDrops, finish }: TwoSwatches): FromSwatches {
  if (!(drops > 0 && whiteDrops > 0)) return { ok: false, at: 'drops', reason: 'no-drops' };
  const full = swatchReflectance(masstone, finish);
  if (!full.ok) return { ok: false, at: 'masstone', reason: full.reason };
  const light = swatchReflectance(tint, finish);
  if (!light.ok) return { ok: false, at: 'tint', reason: light.reason };
  const [p, q] = [full.reflectance.map(absorptionRatio), light.reflectance.map(absorptionRatio)];
  // What a little of K/S takes off the tint's reflectance: dR/dq = −2R²/(1 − R²).
  const summed = (of: (band: number) => number) =>
    foldedWeights.D65.y.reduce((sum, weight, band) => {
      const squared = (light.reflectance[band] ?? NaN) ** 2;
      return sum + (weight * squared * of(band)) / (1 - squared);
    }, 0);
  const overWhite = summed((band) => (q[band] ?? NaN) - (whiteRatio[band] ?? NaN));
  const underFull = summed((band) => (p[band] ?? NaN) - (q[band] ?? NaN));
  if (!(underFull > 0)) return { ok: false, at: 'tint', reason: 'tint-not-lighter' };
  if (!(overWhite > 0)) return { ok: false, at: 'tint', reason: 'tint-whiter-than-white' };
  const ratio = (whiteDrops * overWhite) / (drops * underFull);
  const again = p.map((mine, band) =>
    thickReflectance(
      (drops * ratio * mine + whiteDrops * (whiteRatio[band] ?? NaN)) / (drops * ratio + whiteDrops),
    ),
  );
  const tintMiss = ciede2000(spectrumToLab(seen(again, finish)), tint);
  if (!(tintMiss <= mostTintMiss)) return { ok: false, at: 'tint', reason: 'tint-of-another-pigment' };
  const scatter = ratio * whiteScatter;
  return {
    ok: true,
    layer: p.map((mine) => ({ k: mine * scatter, s: scatter })),
    scatter,
    tintMiss,
    isTested: swatchTrust(masstone) === 'earth-like',
  };
}

function seen(reflectance: Spectrum, finish: Finish): Spectrum {
  return finish === 'matt'
    ? reflectance
    : reflectance.map((value) => seenThroughSurface(value, filmSurface, shineOf(finish)));
}
