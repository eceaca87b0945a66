import { bandCount, forBands, type Spectrum } from './bands.ts';
import type { Lab } from './lab.ts';
import { spectrumToLab } from './observe.ts';
import { skinOptics, type SkinOptics } from './skinOptics.ts';
import type { NoSkinSpectrum } from './skinSpectrum.ts';
import { solve3, type Triple } from './solve3.ts';
import { fitFractions } from './veil.ts';
import { withinSurface } from './saunderson.ts';

export type OverOldPigment = SkinOptics | NoSkinSpectrum | Readonly<{ ok: false; reason: 'old-pigment-not-reached' }>;

const rounds = 60;
const step = 1e-6;

/** A smooth curve over the bands with three numbers: level, slope, bend (Legendre polynomials). */
function smoothLog([level, slope, bend]: Triple): Spectrum {
  return forBands((band) => {
    const x = (2 * band) / (bandCount - 1) - 1;
    return level + slope * x + (bend * (3 * x * x - 1)) / 2;
  });
}

/**
 * Skin with old pigment in it: the skin's spectrum times a smooth ratio, found so that the two together are exactly the
 * colour seen. What was once put in, and how deep, cannot be told from a colour: this does not try.
 * `skin` is the bare skin beside the old work, `seen` the old work. New pigment is then laid over the result as over skin.
 */
export function overOldPigment(skin: Lab, seen: Lab): OverOldPigment {
  const bare = skinOptics(skin);
  if (!bare.ok) return bare;
  let numbers: Triple = [0, 0, 0];
  const shown = (triple: Triple) => smoothLog(triple).map((log, band) => Math.min(1, Math.exp(log) * (bare.reflectance[band] ?? 0)));
  const missOf = (triple: Triple): Triple => {
    const { l, a, b } = spectrumToLab(shown(triple));
    return [l - seen.l, a - seen.a, b - seen.b];
  };
  for (let round = 0; round < rounds; round++) {
    const miss = missOf(numbers);
    if (Math.hypot(...miss) < 1e-9) {
      const reflectance = shown(numbers);
      const surfaces = reflectance.map((value, band) => ({ outside: Math.min(bare.surfaces[band]?.outside ?? 0, 0.8 * value), inside: bare.surfaces[band]?.inside ?? 0 }));
      const inside = reflectance.map((value, band) => withinSurface(value, surfaces[band] ?? { outside: 0, inside: 0 }));
      return { ...bare, reflectance, surfaces, inside, fractions: fitFractions(bare.inside) };
    }
    const column = (i: number): Triple => {
      const moved = missOf([numbers[0] + (i === 0 ? step : 0), numbers[1] + (i === 1 ? step : 0), numbers[2] + (i === 2 ? step : 0)]);
      return [(moved[0] - miss[0]) / step, (moved[1] - miss[1]) / step, (moved[2] - miss[2]) / step];
    };
    const move = solve3([column(0), column(1), column(2)], miss);
    if (!move) break;
    const shrink = Math.max(1, ...move.map((part) => Math.abs(part) / 0.5));
    numbers = [numbers[0] - move[0] / shrink, numbers[1] - move[1] / shrink, numbers[2] - move[2] / shrink];
    if (numbers.some((number) => !(Math.abs(number) < 30))) break;
  }
  return { ok: false, reason: 'old-pigment-not-reached' };
}
