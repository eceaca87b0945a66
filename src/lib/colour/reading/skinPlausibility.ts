import type { Lab } from '../spaces/lab.ts';
import { skinSpectrum } from '../layers/skinSpectrum.ts';

/** Is a reading like the skins that were measured? */
export type Plausibility = 'like-the-measured' | 'outside-the-measured' | 'no-skin-like-it';

/**
 * Compares a colour with the measured skins the colour model learned from. Most of them were light: below
 * about L* 50 a real skin is "outside the measured", which says something about the measuring and nothing
 * about the skin.
 */
export function skinPlausibility(lab: Lab): Plausibility {
  const spectrum = skinSpectrum(lab);
  if (!spectrum.ok) return 'no-skin-like-it';
  return spectrum.isOutsideMeasured ? 'outside-the-measured' : 'like-the-measured';
}
