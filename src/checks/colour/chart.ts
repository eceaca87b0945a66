import { xyzToLab, type Lab, type Xyz } from '#lib/colour/spaces/lab.ts';
import { spectrumToXyz } from '#lib/colour/spectrum/observe.ts';
import type { Check } from '../check.ts';
import { chartSpectra } from './chartSpectra.ts';

type Xyy = readonly [number, number, number];
const xyzOf = ([x, y, luminance]: Xyy): Xyz => ({
  x: (100 * luminance * x) / y,
  y: 100 * luminance,
  z: (100 * luminance * (1 - x - y)) / y,
});
const xyyOf = ({ x, y, z }: Xyz): Xyy => [x / (x + y + z), y / (x + y + z), y / 100];

/** x, y and Y under D50 of each patch, as printed beside its spectrum. */
const printedXyy = {
  'dark skin': [0.4325, 0.3788, 0.1034],
  'light skin': [0.4191, 0.3748, 0.3525],
  foliage: [0.37, 0.4501, 0.1335],
  orange: [0.5291, 0.4075, 0.3117],
  'neutral 5': [0.3438, 0.3589, 0.1912],
} as const satisfies Readonly<Record<keyof typeof chartSpectra, Xyy>>;

const names = ['dark skin', 'light skin', 'foliage', 'orange', 'neutral 5'] as const;
const numbers = ['x', 'y', 'Y'] as const;

/** The spectrum of a patch, seen under D50 by our weights. */
const spectral = names.flatMap((name) =>
  numbers.map((number, i): Check => ({
    id: `chart-${name.replace(' ', '-')}-${number === 'Y' ? 'luminance' : number}`,
    kind: 'table',
    source: 'chart-average',
    where: 'reflectance of a patch, and its xyY under D50',
    what: `${number} of “${name}” from its spectrum`,
    printed: printedXyy[name][i] ?? 0,
    unit: '1',
    tolerance: 0.006 * (printedXyy[name][i] ?? 0),
    because: 'three decimals of reflectance; the chart’s own sum used other steps of wavelength',
    ours: (factor = 1) => factor * (xyyOf(spectrumToXyz(chartSpectra[name], 'D50'))[i] ?? Number.NaN),
  })),
);

/** The white the maker's L*a*b* stand against. */
const iccWhite: Xyz = { x: 96.42, y: 100, z: 82.49 };
const makerPatches: readonly Readonly<{ name: string; xyy: Xyy; lab: Lab }>[] = [
  { name: 'dark skin', xyy: [0.4316, 0.3777, 0.1008], lab: { l: 37.986, a: 13.555, b: 14.059 } },
  { name: 'light skin', xyy: [0.4197, 0.3744, 0.3495], lab: { l: 65.711, a: 18.13, b: 17.81 } },
  { name: 'orange', xyy: [0.5295, 0.4055, 0.3118], lab: { l: 62.661, a: 36.067, b: 57.096 } },
];
const maker = makerPatches.flatMap(({ name, xyy, lab }) =>
  (['l', 'a', 'b'] as const).map((axis): Check => ({
    id: `chart-maker-${name.replace(' ', '-')}-${axis}`,
    kind: 'table',
    source: 'chart-maker',
    where: 'xyY and L*a*b* of the same patches under D50',
    what: `${axis === 'l' ? 'L*' : `${axis}*`} of “${name}” from its xyY`,
    printed: lab[axis],
    unit: '1',
    tolerance: 0.0085 * lab[axis],
    because: 'xyY is printed to four decimals',
    ours: (factor = 1) => factor * xyzToLab(xyzOf(xyy), iccWhite)[axis],
  })),
);

/** A printed chart of colours: from spectrum to xyY, and from xyY to CIELAB. */
export const chartChecks: readonly Check[] = [...spectral, ...maker];
