import { bottleIds, type BottleId } from '#lib/colour/pigment/bottleIds.ts';
import { type Bottle, bottles } from '#lib/colour/pigment/bottles.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { type OwnSlot, ownSlots } from '#lib/colour/own/ownSlots.ts';
import { readyBottles } from '#lib/colour/own/readyBottles.ts';
import type { Shares } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';

export type Mixed =
  | Readonly<{ ok: true; drops: number; shares: Shares }>
  | Readonly<{ ok: false; reason: 'no-drops' | 'own-bottle-missing' }>;

/** The bottles of one's own that have drops in a mix. Undefined where one of them is not on this device. */
function ownIn(slots: readonly OwnSlot[], shelf: readonly OwnBottle[]): readonly Bottle[] | undefined {
  const ready = readyBottles(slots.flatMap((slot) => shelf.find((bottle) => bottle.slot === slot) ?? []));
  return ready.length === slots.length ? ready : undefined;
}

/** What the drops of a state make together. `shelf`: the bottles of one's own. */
export function mixedOf(
  state: Readonly<Record<BottleId | OwnSlot, number>>,
  shelf: readonly OwnBottle[],
): Mixed {
  const slots = ownSlots.filter((slot) => Math.round(state[slot]) > 0);
  const own = ownIn(slots, shelf);
  if (!own) return { ok: false, reason: 'own-bottle-missing' };
  const recipe = [...bottleIds, ...slots].map((id) => Math.round(state[id]));
  const drops = recipe.reduce((sum, count) => sum + count, 0);
  return drops === 0
    ? { ok: false, reason: 'no-drops' }
    : { ok: true, drops, shares: sharesOf(recipe, [...bottles, ...own]) };
}
