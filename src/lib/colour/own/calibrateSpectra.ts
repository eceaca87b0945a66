import type { Spectrum } from '../spectrum/bands.ts';
import type { Layer } from '../layers/kubelkaMunk.ts';
import type { LayerSpectrum } from '../layers/veil.ts';
import { scatterFromTint, type TintReason } from './scatterFromTint.ts';

export type Calibrated =
  | Readonly<{ ok: true; layer: LayerSpectrum }>
  | Readonly<{ ok: false; reason: TintReason; band: number }>;

/**
 * A bottle's K and S, band by band, from measured spectra of its masstone and of one tint with a known white:
 * both thick, both already rid of their surface (`withinSurface`). The first band that cannot be is named
 * with the reason.
 */
export function calibrateSpectra(
  masstone: Spectrum,
  tint: Spectrum,
  white: LayerSpectrum,
  drops: number,
  whiteDrops: number,
): Calibrated {
  const layer: Layer[] = [];
  for (const [band, ofWhite] of white.entries()) {
    const found = scatterFromTint({
      masstone: masstone[band] ?? NaN,
      tint: tint[band] ?? NaN,
      white: ofWhite,
      drops,
      whiteDrops,
    });
    if (!found.ok) return { ...found, band };
    layer.push(found.layer);
  }
  return { ok: true, layer };
}
