import type { Spectrum } from '../spectrum/bands.ts';
import { layerOver, underLayer, type Layer } from './kubelkaMunk.ts';
import type { Lab } from '../spaces/lab.ts';
import { modelValues as m } from '../numbers/model.ts';
import { withinSurface, type Surface } from './saunderson.ts';
import { skinSpectrum, type NoSkinSpectrum } from './skinSpectrum.ts';
import { fitFractions, veil, type LayerSpectrum, type SkinFractions } from './veil.ts';

/** One skin as the model sees it. */
export type SkinOptics = Readonly<{
  ok: true;
  /** What an instrument sees, shine included. */
  reflectance: Spectrum;
  isOutsideMeasured: boolean;
  /** The surface of each band, and the reflectance within it. */
  surfaces: readonly Surface[];
  inside: Spectrum;
  fractions: SkinFractions;
}>;

/**
 * A surface may take at most this share of what a band shows: the darkest bands of deep skins reflect less
 * than a smooth surface of index 1.4 would.
 */
export const mostFromSurface = 0.8;
/** A veil alone may show at most this share of the skin it lies in. */
const mostFromVeil = 0.8;

/** A skin of this colour (L*a*b* under D65) with everything the layers need. */
export function skinOptics(lab: Lab): SkinOptics | NoSkinSpectrum {
  const found = skinSpectrum(lab);
  if (!found.ok) return found;
  const { reflectance, isOutsideMeasured } = found;
  const surfaces = reflectance.map((seen) => ({
    outside: Math.min(m.surfaceOutside, mostFromSurface * seen),
    inside: m.surfaceInside,
  }));
  const inside = reflectance.map((seen, band) => withinSurface(seen, surfaces[band] ?? bareSurface));
  return { ok: true, reflectance, isOutsideMeasured, surfaces, inside, fractions: fitFractions(inside) };
}

const bareSurface: Surface = { outside: m.surfaceOutside, inside: m.surfaceInside };

export type VeiledSkin = Readonly<{ above: LayerSpectrum; under: Spectrum }>;

/**
 * The skin parted at a depth: what lies above the pigment, and what must lie under it so that both together
 * are exactly the skin of today. "No pigment, no change" holds by this, at any depth.
 */
export function partedAt(
  { inside, fractions }: SkinOptics,
  depthMm: number,
  veilShare: number = m.veilShare,
): VeiledSkin {
  const above = veil(fractions, depthMm, veilShare).map((layer, band) => heldUnder(layer, inside[band] ?? 0));
  const under = above.map((layer, band) => {
    const found = underLayer(layer, inside[band] ?? 0);
    return found.ok ? found.reflectance : 0;
  });
  return { above, under };
}

const halvings = 40;

/**
 * The layer, or as much of its thickness as a band that shows `seen` leaves room for: the veil alone may not
 * outshine the skin, nor swallow so much that no ground could make up for it. Found by halving.
 */
function heldUnder(layer: Layer, seen: number): Layer {
  const thinned = (share: number): Layer => ({ k: layer.k * share, s: layer.s * share });
  const isAllowed = (one: Layer) => layerOver(one, 0) <= mostFromVeil * seen && underLayer(one, seen).ok;
  if (isAllowed(layer)) return layer;
  let [good, bad] = [0, 1];
  for (let i = 0; i < halvings; i++) {
    const middle = (good + bad) / 2;
    if (isAllowed(thinned(middle))) good = middle;
    else bad = middle;
  }
  return thinned(good);
}
