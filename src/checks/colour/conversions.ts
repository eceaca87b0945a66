import { labToXyz, xyzToLab, type Lab, type Xyz } from '#lib/colour/spaces/lab.ts';
import { labToLch } from '#lib/colour/spaces/lch.ts';
import { labToSrgb, screenWhite } from '#lib/colour/spaces/srgb.ts';
import { linearLight, linearToLab, srgbToLab } from '#lib/colour/spaces/srgbToLab.ts';
import type { SourceId } from '#lib/evidence/bibliography.ts';
import type { Check } from '../check.ts';

const d65: Xyz = { x: 95.047, y: 100, z: 108.883 };
const d50: Xyz = { x: 96.422, y: 100, z: 82.521 };
const xyz = (x: number, y: number, z: number): Xyz => ({ x, y, z });

type Row = Readonly<{
  id: string;
  kind?: Check['kind'];
  source: SourceId;
  where: string;
  what: string;
  printed: number;
  tolerance: number;
  because?: string;
  value: () => number;
}>;
const row = ({
  value,
  kind = 'library',
  because = 'rounding of the printed value, and of the white',
  ...rest
}: Row): Check => ({ ...rest, kind, unit: '1', because, ours: (factor = 1) => factor * value() });

const axisWords = { l: 'L*', a: 'a*', b: 'b*' } as const;
const toLab = (
  source: SourceId,
  where: string,
  id: string,
  from: Xyz,
  white: Xyz,
  printed: Lab,
  tolerance: number,
): readonly Check[] =>
  (['l', 'a', 'b'] as const).map((axis) =>
    row({
      id: `${id}-${axis}`,
      source,
      where,
      what: `${axisWords[axis]} of X ${from.x}, Y ${from.y}, Z ${from.z}`,
      printed: printed[axis],
      tolerance,
      value: () => xyzToLab(from, white)[axis],
    }),
  );

const lch = (
  source: SourceId,
  where: string,
  id: string,
  from: Lab,
  chroma: number,
  hDeg: number,
  tolerance: number,
): readonly Check[] => [
  row({
    id: `${id}-c`,
    source,
    where,
    what: `chroma of a* ${from.a}, b* ${from.b}`,
    printed: chroma,
    tolerance,
    value: () => labToLch(from).c,
  }),
  row({
    id: `${id}-h`,
    source,
    where,
    what: `hue angle of a* ${from.a}, b* ${from.b}`,
    printed: hDeg,
    tolerance,
    value: () => labToLch(from).hDeg,
  }),
];

const documented = xyz(20.654008, 12.197225, 5.136952);
const documentedLab: Lab = { l: 41.52787529, a: 52.63858304, b: 26.92317922 };
const blue = { r: 0.2, g: 0.4, b: 0.6 };
const blueXyz = () => labToXyz(srgbToLab(blue), screenWhite);
const grey18 = () => labToSrgb(linearToLab({ r: 0.18, g: 0.18, b: 0.18 })).r;
const redXyz = () => labToXyz(linearToLab({ r: 1, g: 0, b: 0 }), screenWhite);
const greenXyz = () => labToXyz(linearToLab({ r: 0, g: 1, b: 0 }), screenWhite);

/** Between XYZ, CIELAB, chroma and hue, and what a screen shows. */
export const conversionChecks: readonly Check[] = [
  ...toLab(
    'colour-science-tests',
    'example of XYZ to L*a*b*',
    'documented-lab',
    documented,
    screenWhite,
    documentedLab,
    1e-4,
  ),
  row({
    id: 'documented-x',
    source: 'colour-science-tests',
    where: 'example of L*a*b* to XYZ',
    what: 'X of L* 41.5279, a* 52.6386, b* 26.9232',
    printed: 20.654,
    tolerance: 1e-3,
    value: () => labToXyz(documentedLab, screenWhite).x,
  }),
  row({
    id: 'documented-z',
    source: 'colour-science-tests',
    where: 'example of L*a*b* to XYZ',
    what: 'Z of the same',
    printed: 5.13695,
    tolerance: 1e-3,
    value: () => labToXyz(documentedLab, screenWhite).z,
  }),
  ...lch(
    'colour-science-tests',
    'tests of chroma and hue',
    'documented-lch',
    documentedLab,
    59.12425901,
    27.08848784,
    1e-6,
  ),
  ...lch(
    'colour-science-tests',
    'tests of chroma and hue',
    'documented-lch-blue',
    { l: 29.8056552, a: 20.01830466, b: -48.34913874 },
    52.32945383,
    292.49133666,
    1e-6,
  ),
  row({
    id: 'screen-grey-18',
    source: 'colour-science-tests',
    where: 'tests of the screen’s curve',
    what: 'coded value of linear light 0.18',
    printed: 0.461356129500442,
    tolerance: 1e-6,
    value: grey18,
  }),
  ...toLab(
    'lindbloom-calculator',
    'XYZ to L*a*b* under D65',
    'lindbloom-d65',
    xyz(10, 20, 30),
    d65,
    { l: 51.8372, a: -56.3591, b: -13.1812 },
    1e-3,
  ),
  ...toLab(
    'lindbloom-calculator',
    'XYZ to L*a*b* under D65',
    'lindbloom-dark',
    xyz(0.5, 0.6, 0.4),
    d65,
    { l: 5.4198, a: -2.879, b: 3.623 },
    1e-3,
  ),
  ...toLab(
    'lindbloom-calculator',
    'XYZ to L*a*b* under D50',
    'lindbloom-d50',
    xyz(2.61219, 1.52732, 10.96471),
    d50,
    { l: 12.7806, a: 26.1147, b: -52.4348 },
    1e-3,
  ),
  ...lch(
    'lindbloom-calculator',
    'XYZ to LCh under D65',
    'lindbloom-lch',
    xyzToLab(xyz(80, 90, 10), d65),
    103.4134,
    95.9163,
    1e-3,
  ),
  row({
    id: 'lindbloom-screen-x',
    source: 'lindbloom-calculator',
    where: 'screen colour to xyY',
    what: 'x of the screen’s 0.2, 0.4, 0.6',
    printed: 0.210775,
    tolerance: 2e-4,
    value: () => blueXyz().x / (blueXyz().x + blueXyz().y + blueXyz().z),
  }),
  row({
    id: 'lindbloom-screen-luminance',
    source: 'lindbloom-calculator',
    where: 'screen colour to xyY',
    what: 'Y of the screen’s 0.2, 0.4, 0.6',
    printed: 12.5053,
    tolerance: 2e-3,
    value: () => blueXyz().y,
  }),
  row({
    id: 'grace-linear',
    source: 'grace-calculator',
    where: 'screen colour to linear light',
    what: 'linear light of 0.2',
    printed: 0.0331047665708851,
    tolerance: 1e-12,
    value: () => linearLight(0.2),
  }),
  row({
    id: 'grace-linear-foot',
    source: 'grace-calculator',
    where: 'screen colour to linear light',
    what: 'linear light of 0.04, below the bend',
    printed: 0.00309597523219814,
    tolerance: 1e-12,
    value: () => linearLight(0.04),
  }),
  row({
    id: 'grace-lab-l',
    source: 'grace-calculator',
    where: 'screen colour to L*a*b*',
    what: 'L* of the screen’s 0.2, 0.4, 0.6',
    printed: 42.0099857768665,
    tolerance: 0.02,
    value: () => srgbToLab(blue).l,
  }),
  row({
    id: 'grace-lab-b',
    source: 'grace-calculator',
    where: 'screen colour to L*a*b*',
    what: 'b* of the screen’s 0.2, 0.4, 0.6',
    printed: -32.8445986139017,
    tolerance: 0.05,
    value: () => srgbToLab(blue).b,
  }),
  row({
    id: 'grace-screen-red',
    source: 'grace-calculator',
    where: 'XYZ to screen colour',
    what: 'screen red of X 70, Y 80, Z 60',
    printed: 0.875406485338221,
    tolerance: 2e-4,
    value: () => labToSrgb(xyzToLab(xyz(70, 80, 60), screenWhite)).r,
  }),
  row({
    id: 'grace-screen-blue',
    source: 'grace-calculator',
    where: 'XYZ to screen colour',
    what: 'screen blue of X 70, Y 80, Z 60',
    printed: 0.741853183799866,
    tolerance: 2e-4,
    value: () => labToSrgb(xyzToLab(xyz(70, 80, 60), screenWhite)).b,
  }),
  row({
    id: 'css-red-x',
    kind: 'hand',
    source: 'css-color-4',
    where: 'matrix from linear light to XYZ',
    what: 'X of the screen’s full red: 506752 ÷ 1228815',
    printed: 0.41239079926595934,
    tolerance: 1e-8,
    because: 'a fraction, worked out',
    value: () => redXyz().x / 100,
  }),
  row({
    id: 'css-green-y',
    kind: 'hand',
    source: 'css-color-4',
    where: 'matrix from linear light to XYZ',
    what: 'Y of the screen’s full green: 175762 ÷ 245763',
    printed: 0.715168678767756,
    tolerance: 1e-8,
    because: 'a fraction, worked out',
    value: () => greenXyz().y / 100,
  }),
  row({
    id: 'css-screen-red',
    kind: 'hand',
    source: 'css-color-4',
    where: 'matrix from XYZ to linear light',
    what: 'linear red of X 30, Y 30, Z 30: 0.3 × (12831 ÷ 3959 − 329 ÷ 214 − 1974 ÷ 3959)',
    printed: 0.36149279,
    tolerance: 1e-5,
    because: 'worked out by hand',
    value: () => linearLight(labToSrgb(xyzToLab(xyz(30, 30, 30), screenWhite)).r),
  }),
];
