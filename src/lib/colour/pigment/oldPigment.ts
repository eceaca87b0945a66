import { bandCount, forBands, type Spectrum } from '../spectrum/bands.ts';
import type { Lab } from '../spaces/lab.ts';
import { newton3 } from '../../algebra/newton3.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { withinSurface, type Surface } from '../layers/saunderson.ts';
import { mostFromSurface, skinOptics, type SkinOptics } from '../layers/skinOptics.ts';
import type { NoSkinSpectrum } from '../layers/skinSpectrum.ts';
import type { Triple } from '../../algebra/solve3.ts';

export type OverOldPigment =
  | SkinOptics
  | NoSkinSpectrum
  | Readonly<{ ok: false; reason: 'old-pigment-not-reached' }>;

/** A smooth curve over the bands with three numbers: level, slope, bend (Legendre polynomials). */
function smoothLog([level, slope, bend]: Triple): Spectrum {
  return forBands((band) => {
    const x = (2 * band) / (bandCount - 1) - 1;
    return level + slope * x + (bend * (3 * x * x - 1)) / 2;
  });
}

/**
 * Skin with old pigment in it: the skin's spectrum times a smooth ratio, found so that the two together are
 * exactly the colour seen. What was once put in, and how deep, cannot be told from a colour: this does not
 * try.
 * `skin` is the bare skin beside the old work, `seen` the old work. New pigment is then laid over the result
 * as over skin.
 */
export function overOldPigment(skin: Lab, seen: Lab): OverOldPigment {
  const bare = skinOptics(skin);
  if (!bare.ok) return bare;
  const shown = (triple: Triple) =>
    smoothLog(triple).map((log, band) => Math.min(1, Math.exp(log) * (bare.reflectance[band] ?? 0)));
  const missOf = (triple: Triple): Triple => {
    const { l, a, b } = spectrumToLab(shown(triple));
    return [l - seen.l, a - seen.a, b - seen.b];
  };
  const numbers = newton3(missOf, { step: 1e-6, longestMove: 0.5, nearEnough: 1e-9 });
  if (!numbers) return { ok: false, reason: 'old-pigment-not-reached' };
  const reflectance = shown(numbers);
  const surfaces = bare.surfaces.map(({ outside, inside }, band): Surface => ({
    outside: Math.min(outside, mostFromSurface * (reflectance[band] ?? 0)),
    inside,
  }));
  const inside = surfaces.map((surface, band) => withinSurface(reflectance[band] ?? 0, surface));
  return { ...bare, reflectance, surfaces, inside };
}
