import { absorptionRatio, type Layer } from '../layers/kubelkaMunk.ts';

export type TintReason =
  | 'no-drops'
  | 'no-reflectance'
  | 'masstone-not-darker-than-white'
  | 'tint-not-lighter'
  | 'tint-whiter-than-white';
export type TintBand = Readonly<{ ok: true; layer: Layer }> | Readonly<{ ok: false; reason: TintReason }>;

/**
 * One band of a masstone and of its tint, thick layers without a surface, and the white that made the tint,
 * at unit dose.
 */
export type TintReading = Readonly<{
  masstone: number;
  tint: number;
  white: Layer;
  drops: number;
  whiteDrops: number;
}>;

/**
 * K and S of one drop of a bottle in one band, in the unit of the white's drop. The masstone gives p = K/S. A
 * tint of n drops with w drops of white has q = (nK + wKw)/(nS + wSw), drops being additive in both (Duncan
 * 1940), and so S = (w/n)(q·Sw − Kw)/(p − q), K = p·S. Needs a pigment darker than the white here, and a tint
 * between the two.
 */
export function scatterFromTint({ masstone, tint, white, drops, whiteDrops }: TintReading): TintBand {
  if (!(drops > 0 && whiteDrops > 0)) return { ok: false, reason: 'no-drops' };
  if (![masstone, tint].every((reflectance) => reflectance > 0 && reflectance <= 1))
    return { ok: false, reason: 'no-reflectance' };
  const [p, q, ofWhite] = [absorptionRatio(masstone), absorptionRatio(tint), white.k / white.s];
  if (!(p > ofWhite)) return { ok: false, reason: 'masstone-not-darker-than-white' };
  if (!(q < p)) return { ok: false, reason: 'tint-not-lighter' };
  if (!(q > ofWhite)) return { ok: false, reason: 'tint-whiter-than-white' };
  const s = ((whiteDrops / drops) * (q * white.s - white.k)) / (p - q);
  return { ok: true, layer: { k: p * s, s } };
}
