import type { Draw } from '#lib/quantities/seed.ts';
import type { BrowHair } from '#lib/face/form.ts';
import type { BrowSpots } from '#lib/face/landmarks.ts';
import { blend, clamp, distance, type Spot, type Spots } from '#lib/face/spot.ts';
import { placeIn } from './browEdges.ts';
import type { Hair } from './growth.ts';

/** A scar as it crosses a brow. */
export type ScarAcross = Readonly<{ t: number; lean: number; widthMm: number }>;

/** Says where no hair grows: small gaps, round loss, a scar, a thin tail. */
export type Bareness = Readonly<{
  rootIsBare: (t: number, s: number) => boolean;
  crossesBare: (hair: Hair) => boolean;
}>;

export function barenessOf(
  brow: BrowSpots,
  hair: BrowHair,
  scar: ScarAcross | undefined,
  draw: Draw,
): Bareness {
  const gaps = Array.from({ length: Math.round(hair.gaps * 14) }, () => ({
    at: placeIn(brow, 0.1 + 0.85 * draw(), draw()),
    radiusMm: 0.5 + 0.9 * draw(),
  }));
  const patch = hair.patch && {
    at: placeIn(brow, hair.patch.t, hair.patch.s),
    radiusMm: hair.patch.radiusMm,
  };
  const isBare = (spot: Spot): boolean =>
    gaps.some((gap) => distance(gap.at, spot) < gap.radiusMm) ||
    (patch !== undefined && distance(patch.at, spot) < patch.radiusMm * (0.82 + 0.3 * draw())) ||
    (scar !== undefined && scarDistanceMm(brow, scar, spot) < scar.widthMm / 2);
  const thinTail = (t: number): boolean =>
    hair.sparseTail > 0 && t > 0.55 && draw() < hair.sparseTail * clamp((t - 0.55) / 0.2, 0, 1);
  return {
    rootIsBare: (t, s) => isBare(placeIn(brow, t, s)) || thinTail(t),
    crossesBare: ({ root, tip }) =>
      (patch !== undefined || scar !== undefined) &&
      [0.35, 0.7, 1].some((k) => isBare([blend(root[0], tip[0], k), blend(root[1], tip[1], k)])) &&
      draw() < 0.85,
  };
}

function scarDistanceMm(brow: BrowSpots, { t, lean }: ScarAcross, [u, v]: Spot): number {
  const [middleU, middleV] = placeIn(brow, t, 0.5);
  return Math.abs(u - middleU - lean * (v - middleV));
}

/** The scar's middle line, a little longer than the brow is thick. */
export function scarLine(brow: BrowSpots, { t, lean }: Pick<ScarAcross, 't' | 'lean'>): Spots {
  const [u, v] = placeIn(brow, t, 0.5);
  const wobble: Spots = [
    [0, 6],
    [0.2, 2.6],
    [-0.2, -1.2],
    [0.15, -5],
  ];
  return wobble.map(([side, up]): Spot => [u + lean * up + side, v + up]);
}
