/**
 * One pigmented layer in one band: absorption and backscatter, each already times the thickness.
 * Kubelka & Munk 1931, in the two-constant form of Duncan: drops mix linearly in both. Holds for diffuse
 * light in a layer without surfaces; never average K/S of two paints.
 */
export type Layer = Readonly<{ k: number; s: number }>;

/** A layer that changes nothing. */
export const clearLayer: Layer = { k: 0, s: 0 };

/**
 * K/S of a layer too thick to see through, from its reflectance: (1 − R)²/2R. R must be above 0 and at most
 * 1.
 */
export function absorptionRatio(reflectance: number): number {
  return (1 - reflectance) ** 2 / (2 * reflectance);
}

/** The reflectance of a layer too thick to see through: 1 + q − √(q² + 2q), q = K/S. */
export function thickReflectance(ratio: number): number {
  return 1 / (1 + ratio + Math.sqrt(ratio * (ratio + 2)));
}

/** x coth x, and 1 at x = 0. */
function timesCoth(x: number): number {
  if (x === 0) return 1;
  const fall = Math.expm1(-2 * x);
  return (-x * (2 + fall)) / fall;
}

/**
 * √u coth √u with u = K(K + 2S): what makes the sums below need no special case for a clear or a black layer.
 */
export function rise({ k, s }: Layer): number {
  return timesCoth(Math.sqrt(k * (k + 2 * s)));
}

/** The reflectance of a layer that lies on something of reflectance `under`, 0 to 1. */
export function layerOver({ k, s }: Layer, under: number): number {
  const c = rise({ k, s });
  return (s - under * (k + s - c)) / (k + s + c - under * s);
}

/** The share of light that a layer lets through. */
export function layerTransmittance({ k, s }: Layer): number {
  const x = Math.sqrt(k * (k + 2 * s));
  const overSinh = x === 0 ? 1 : (-2 * x * Math.exp(-x)) / Math.expm1(-2 * x);
  return overSinh / (k + s + rise({ k, s }));
}

export type Under =
  | Readonly<{ ok: true; reflectance: number }>
  | Readonly<{ ok: false; reason: 'layer-too-dense' | 'outside-0-to-1' }>;

/** What must lie under a layer so that the two together reflect `seen`: the inverse of `layerOver`. */
export function underLayer({ k, s }: Layer, seen: number): Under {
  const c = rise({ k, s });
  const below = k + s - c - seen * s;
  if (below === 0) return { ok: false, reason: 'layer-too-dense' };
  const reflectance = (s - seen * (k + s + c)) / below;
  return reflectance >= 0 && reflectance <= 1
    ? { ok: true, reflectance }
    : { ok: false, reason: 'outside-0-to-1' };
}

/** Several layers mixed into one thickness, each by its share: K and S add. */
export function mixedLayer(parts: readonly Readonly<{ layer: Layer; share: number }>[]): Layer {
  return {
    k: parts.reduce((sum, { layer, share }) => sum + share * layer.k, 0),
    s: parts.reduce((sum, { layer, share }) => sum + share * layer.s, 0),
  };
}
