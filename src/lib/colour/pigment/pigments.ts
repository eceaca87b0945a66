import { pigmentPowders } from '../../tables/pigmentPowders.ts';
import { bandsNm } from '../spectrum/bands.ts';
import { absorptionRatio, clearLayer } from '../layers/kubelkaMunk.ts';
import type { LayerSpectrum } from '../layers/veil.ts';

/** The pigments bottles are made of, by Colour Index number. */
export const pigmentIds = ['77891', '77492', '77491', '77499', '77266'] as const;
export type PigmentId = (typeof pigmentIds)[number];

/**
 * Which measured powder stands for a number, and its backscatter at unit dose: both assumed. Powders carry no
 * level.
 */
const standsFor: Readonly<
  Record<PigmentId, Readonly<{ powder: keyof typeof pigmentPowders; scatter: number; levelTimes: number }>>
> = {
  // The powder reads 0.56 to 0.60 where titanium white reflects nearly all: scaled so that its plateau is
  // 0.96.
  '77891': { powder: 'titaniumDioxide', scatter: 1.2, levelTimes: 0.96 / 0.6 },
  '77492': { powder: 'goethite', scatter: 0.5, levelTimes: 1 },
  '77491': { powder: 'ironRed', scatter: 0.5, levelTimes: 1 },
  '77499': { powder: 'ironBlack', scatter: 0.3, levelTimes: 1 },
  '77266': { powder: 'carbonBlack', scatter: 0.12, levelTimes: 1 },
};

/**
 * A pigment's absorption and backscatter at unit dose, band by band: K/S from the thick powder, S as assumed.
 */
function unitLayer(id: PigmentId): LayerSpectrum {
  const { powder, scatter, levelTimes } = standsFor[id];
  return pigmentPowders[powder].map((reflectance) => ({
    k: scatter * absorptionRatio(Math.min(0.995, reflectance * levelTimes)),
    s: scatter,
  }));
}

/** Every pigment at unit dose. */
export const pigmentLayers: Readonly<Record<PigmentId, LayerSpectrum>> = {
  '77891': unitLayer('77891'),
  '77492': unitLayer('77492'),
  '77491': unitLayer('77491'),
  '77499': unitLayer('77499'),
  '77266': unitLayer('77266'),
};

/**
 * Shares of the pigments in a bottle or a mix; they add to 1. `own`: K and S at unit dose of what is known by
 * its swatch alone, already times its share; the shares then add to less.
 */
export type Shares = Readonly<Record<PigmentId, number>> & Readonly<{ own?: LayerSpectrum }>;
/** A factor for each pigment, and one for what is known by its swatch alone. */
export type Factors = Readonly<Record<PigmentId, number>> & Readonly<{ ownLeft?: number }>;

/**
 * The layer of a mix: each pigment by its share times the dose, strengthened or faded by a factor of its own.
 */
export function mixLayer(shares: Shares, dose: number, factors?: Partial<Factors>): LayerSpectrum {
  const parts = pigmentIds.map((id) => ({
    amount: shares[id] * dose * (factors?.[id] ?? 1),
    unit: pigmentLayers[id],
  }));
  if (shares.own) parts.unshift({ amount: dose * (factors?.ownLeft ?? 1), unit: shares.own });
  return bandsNm.map((_, band) => {
    let [k, s] = [0, 0];
    for (const { amount, unit } of parts) {
      const layer = unit[band] ?? clearLayer;
      k += amount * layer.k;
      s += amount * layer.s;
    }
    return { k, s };
  });
}
