import type { Spectrum } from '../spectrum/bands.ts';
import { clearLayer, layerOver } from '../layers/kubelkaMunk.ts';
import type { Lab } from '../spaces/lab.ts';
import type { Lamp } from '../spectrum/lamps.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { noSurface, seenThroughSurface } from '../layers/saunderson.ts';
import { partedAt, type SkinOptics, type VeiledSkin } from '../layers/skinOptics.ts';
import type { LayerSpectrum } from '../layers/veil.ts';

/** Where the pigment lies and how much of the skin it covers. */
export type Setting = Readonly<{
  /** Depth in the model, mm: not a needle length. */
  depthMm: number;
  /** Share of the skin with pigment under it, 0 to 1: strokes leave skin between them. */
  coverage: number;
  /** Share of textbook backscatter of the layer above. */
  veilShare: number;
}>;

/**
 * The reflectance of skin with a layer of pigment in it, shine included. Bare and pigmented skin are averaged
 * by coverage (Murray & Davies 1936), as the eye does from where it cannot part the strokes. No pigment gives
 * the skin exactly.
 */
export function pigmentedReflectance(
  skin: SkinOptics,
  layer: LayerSpectrum,
  { depthMm, coverage, veilShare }: Setting,
): Spectrum {
  return throughParts(skin, partedAt(skin, depthMm, veilShare), layer, coverage);
}

/** The same where the skin has been parted already. */
export function throughParts(
  skin: SkinOptics,
  { above, under }: VeiledSkin,
  layer: LayerSpectrum,
  coverage: number,
): Spectrum {
  return skin.reflectance.map((bare, band) => {
    const ground = layerOver(layer[band] ?? clearLayer, under[band] ?? 0);
    const covered = seenThroughSurface(
      layerOver(above[band] ?? clearLayer, ground),
      skin.surfaces[band] ?? noSurface,
    );
    return bare + coverage * (covered - bare);
  });
}

/** The colour of skin with a layer of pigment in it, under a lamp. */
export function healedColour(
  skin: SkinOptics,
  layer: LayerSpectrum,
  setting: Setting,
  lamp: Lamp = 'D65',
): Lab {
  return spectrumToLab(pigmentedReflectance(skin, layer, setting), lamp);
}
