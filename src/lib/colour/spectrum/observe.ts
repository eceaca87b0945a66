import { foldedWeights } from '../../tables/foldedWeights.ts';
import type { Spectrum } from './bands.ts';
import { xyzToLab, type Lab, type Xyz } from '../spaces/lab.ts';
import type { Lamp } from './lamps.ts';

function sum(weights: readonly number[], spectrum?: Spectrum): number {
  return weights.reduce((total, weight, band) => total + weight * (spectrum ? (spectrum[band] ?? 0) : 1), 0);
}

/** The light a spectrum of reflectance sends to the CIE 1931 2° observer under a lamp. */
export function spectrumToXyz(spectrum: Spectrum, lamp: Lamp = 'D65'): Xyz {
  const { x, y, z } = foldedWeights[lamp];
  return { x: sum(x, spectrum), y: sum(y, spectrum), z: sum(z, spectrum) };
}

/** The white of a lamp: a perfect diffuser. */
export function whiteOf(lamp: Lamp): Xyz {
  const { x, y, z } = foldedWeights[lamp];
  return { x: sum(x), y: sum(y), z: sum(z) };
}

/** CIELAB of a spectrum under a lamp, against that lamp's own white. */
export function spectrumToLab(spectrum: Spectrum, lamp: Lamp = 'D65'): Lab {
  return xyzToLab(spectrumToXyz(spectrum, lamp), whiteOf(lamp));
}
