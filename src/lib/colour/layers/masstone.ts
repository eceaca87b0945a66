import { thickReflectance } from './kubelkaMunk.ts';
import type { Lab } from '../spaces/lab.ts';
import type { Lamp } from '../spectrum/lamps.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { mixLayer, type Shares } from '../pigment/pigments.ts';

/**
 * The colour of a mix in the bottle: a layer too thick to see through, nothing above it. How much of it there
 * is does not matter.
 */
export function masstone(shares: Shares, lamp: Lamp = 'D65'): Lab {
  return spectrumToLab(
    mixLayer(shares, 1).map(({ k, s }) => thickReflectance(k / s)),
    lamp,
  );
}
