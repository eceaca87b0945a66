import { bottleMoves } from '#lib/colour/pigment/bottleMoves.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { readyBottles } from '#lib/colour/own/readyBottles.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import type { OldHueCase } from '#lib/colour/old/oldHueCases.ts';
import { skinOf } from '#lib/colour/old/skinOf.ts';

/** What one small dose of a bottle of one's own does. `hasSwatch`: it is known by its swatch alone. */
export type OwnHueMove = Readonly<{ id: string; move: OldHueCase['skin']; hasSwatch: boolean }>;

/**
 * What the table of cases was worked out with: a tenth of a dose, six in ten of the skin covered, six weeks
 * after.
 */
const [dose, setting] = [
  0.1,
  { depthMm: modelValues.depthMm, coverage: 0.6, veilShare: modelValues.veilShare },
];
const tenth = (value: number) => Math.round(10 * value) / 10;

/**
 * Where the bottles of one's own move the old work of a case, worked out and rounded as the table is. One
 * that cannot be mixed has no row.
 */
export function ownHueMoves(shown: OldHueCase, shelf: readonly OwnBottle[]): readonly OwnHueMove[] {
  const [l, a, b] = shown.skin;
  const old = skinOf({ skinL: l, skinA: a, skinB: b, oldWork: shown.old });
  if (!old.ok) return [];
  const ready = readyBottles(shelf);
  return bottleMoves(old, { l, a, b }, ready, dose, setting, leftOf(startAgeing, 0)).map(({ id, move }) => ({
    id,
    move: [tenth(move.l), tenth(move.a), tenth(move.b)],
    hasSwatch: ready.some((bottle) => bottle.id === id && bottle.shares.own !== undefined),
  }));
}
