import type { Lamp } from '#lib/colour/spectrum/lamps.ts';
import { whiteOf } from '#lib/colour/spectrum/observe.ts';
import type { Check } from '../check.ts';

const white = (lamp: Lamp, axis: 'x' | 'z', printed: number): Check => ({
  id: `white-${lamp.toLowerCase()}-${axis}`,
  kind: 'table',
  source: 'cie-015-2018',
  where: 'tristimulus values of the illuminants, 2° observer',
  what: `${axis.toUpperCase()} of white under ${lamp}, Y being 100`,
  printed,
  unit: '1',
  tolerance: 0.012,
  because: 'two printed decimals, and the lamps are read between 5 nm by straight lines',
  ours: (factor = 1) => factor * whiteOf(lamp)[axis],
});

function ledChromaticity(axis: 'x' | 'y'): number {
  const { x, y, z } = whiteOf('LED-B3');
  return { x, y }[axis] / (x + y + z);
}

const led = (axis: 'x' | 'y', printed: number): Check => ({
  id: `led-b3-${axis}`,
  kind: 'table',
  source: 'cie-015-2018',
  where: 'chromaticity of LED-B3',
  what: `chromaticity ${axis} of the white LED`,
  printed,
  unit: '1',
  tolerance: 2e-4,
  because: 'four printed decimals, read between 5 nm by straight lines',
  ours: (factor = 1) => factor * ledChromaticity(axis),
});

const chromaticity = (lamp: 'D65' | 'D50', axis: 'x' | 'y', printed: number): Check => ({
  id: `chromaticity-${lamp.toLowerCase()}-${axis}`,
  kind: 'table',
  source: 'cie-015-2018',
  where: 'chromaticity coordinates of the illuminants, 2° observer',
  what: `chromaticity ${axis} of ${lamp}`,
  printed,
  unit: '1',
  tolerance: 2e-5,
  because: 'five printed decimals, and the lamps are read between 5 nm by straight lines',
  ours: (factor = 1) => {
    const { x, y, z } = whiteOf(lamp);
    return (factor * { x, y }[axis]) / (x + y + z);
  },
});

const again = (lamp: 'D65' | 'D50' | 'A', axis: 'x' | 'z', printed: number): Check => ({
  id: `white-again-${lamp.toLowerCase()}-${axis}`,
  kind: 'library',
  source: 'skinoptics-whites',
  where: 'white points, 2° observer',
  what: `${axis.toUpperCase()} of white under ${lamp}, Y being 1`,
  printed,
  unit: '1',
  tolerance: 2e-4,
  because: 'four printed decimals',
  ours: (factor = 1) => (factor * whiteOf(lamp)[axis]) / 100,
});

/** The whites our weights give, against the CIE's, and against the same sum done elsewhere. */
export const whiteChecks = [
  white('D65', 'x', 95.04),
  white('D65', 'z', 108.88),
  white('D50', 'x', 96.42),
  white('D50', 'z', 82.51),
  white('A', 'x', 109.85),
  white('A', 'z', 35.58),
  led('x', 0.3756),
  led('y', 0.3723),
  chromaticity('D65', 'x', 0.31271),
  chromaticity('D65', 'y', 0.32903),
  chromaticity('D50', 'x', 0.34567),
  chromaticity('D50', 'y', 0.35851),
  again('D65', 'x', 0.9504),
  again('D65', 'z', 1.0888),
  again('D50', 'x', 0.9641),
  again('D50', 'z', 0.825),
  again('A', 'x', 1.0985),
  again('A', 'z', 0.3558),
] as const satisfies readonly Check[];
