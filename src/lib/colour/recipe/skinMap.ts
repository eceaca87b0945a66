import { bandCount } from '../spectrum/bands.ts';
import type { Setting } from '../healing/healedColour.ts';
import { rise } from '../layers/kubelkaMunk.ts';
import { partedAt, type SkinOptics } from '../layers/skinOptics.ts';

/**
 * Everything above and below a layer of pigment is, in each band, a Möbius map of the layer: with K and S
 * times thickness and C = √u coth √u, u = K(K + 2S), the seen reflectance is R = (n1 S + n2 K + n3 C)/(m1 S +
 * m2 K + C). Five numbers a band that depend on the skin only, six to a row here (the last is spare, so that
 * rows start evenly).
 */
export type SkinMap = Float64Array;
export const rowLength = 6;

/** The five numbers of each band for a skin, a depth, a veil and a coverage. */
export function skinMap(skin: SkinOptics, { depthMm, coverage, veilShare }: Setting): SkinMap {
  const { above, under } = partedAt(skin, depthMm, veilShare);
  const map = new Float64Array(bandCount * rowLength);
  for (let band = 0; band < bandCount; band++) {
    const ground = under[band] ?? 0;
    const { k, s } = above[band] ?? { k: 0, s: 0 };
    const surface = skin.surfaces[band] ?? { outside: 0, inside: 0 };
    const bare = skin.reflectance[band] ?? 0;
    const c = rise({ k, s });
    const body = (1 - surface.outside) * (1 - surface.inside);
    // Numerator and denominator of the layer over its ground, for a unit of S, of K and of C.
    const layer = [
      [1 - ground, 1 - ground],
      [-ground, 1],
      [ground, 1],
    ] as const;
    const [inS, inK, inC] = layer.map(([over, below]) => {
      const [veiledOver, veiledBelow] = [s * below - (k + s - c) * over, (k + s + c) * below - s * over];
      const outBelow = veiledBelow - surface.inside * veiledOver;
      const outOver = surface.outside * outBelow + body * veiledOver;
      return [(1 - coverage) * bare * outBelow + coverage * outOver, outBelow] as const;
    });
    if (!inS || !inK || !inC) continue;
    const at = band * rowLength;
    map.set([inS[0] / inC[1], inK[0] / inC[1], inC[0] / inC[1], inS[1] / inC[1], inK[1] / inC[1]], at);
  }
  return map;
}

/** The fraction below is fitted up to here; beyond, coth is 1 to the last digit. */
export const largestFitted = 200;

/**
 * Above and below the line of the fraction that stands for √u coth √u, 0 ≤ u ≤ 200. Fitted once, never at run
 * time.
 */
export function riseOver(u: number): number {
  return 1.00000759 + u * (0.456615773 + u * (0.0212898966 + u * (1.64242064e-4 + u * 1.06411643e-7)));
}

export function riseUnder(u: number): number {
  return 1 + u * (0.12332576 + u * (0.00237164174 + u * 6.39518113e-6));
}

/**
 * √u coth √u by a fixed fraction of polynomials: relative error at most 7.8e-6, no root, no exponential, no
 * special case at 0.
 */
export function quickRise(u: number): number {
  return u > largestFitted ? Math.sqrt(u) : riseOver(u) / riseUnder(u);
}
