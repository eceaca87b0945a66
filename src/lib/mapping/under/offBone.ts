import type { Stretches } from './stretch.ts';

/**
 * The edge of the bone against the outline's lower edge, mm, positive where the bone's edge stands higher:
 * there the outline hangs below it, on soft skin. From the front to the arch it is taken as at the arch; from
 * the arch to the tail it runs straight from one reading to the other.
 */
export type BoneEdge = Readonly<{ archMm: number; lengthMm: number; atArchMm: number; atTailMm: number }>;

/** Height of the bone's edge over the outline's lower edge at a place, mm from the front. */
export function boneOverEdgeMm({ archMm, lengthMm, atArchMm, atTailMm }: BoneEdge, placeMm: number): number {
  if (placeMm <= archMm) return atArchMm;
  return atArchMm + ((placeMm - archMm) / (lengthMm - archMm)) * (atTailMm - atArchMm);
}

/**
 * The parts of the outline whose lower edge hangs below the bone's edge. An outline exactly on the edge is on
 * the bone.
 */
export function offBone(edge: BoneEdge): Stretches {
  const { archMm, lengthMm, atArchMm, atTailMm } = edge;
  const isOffAtArch = atArchMm > 0;
  const isOffAtTail = atTailMm > 0;
  if (!isOffAtArch && !isOffAtTail) return [];
  if (isOffAtArch && isOffAtTail) return [{ fromMm: 0, toMm: lengthMm }];
  const crossingMm = archMm + ((lengthMm - archMm) * atArchMm) / (atArchMm - atTailMm);
  if (isOffAtTail) return [{ fromMm: crossingMm, toMm: lengthMm }];
  return [{ fromMm: 0, toMm: crossingMm }];
}
