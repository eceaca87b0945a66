import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { ownSlots } from '#lib/colour/own/ownSlots.ts';

export type Joined =
  | Readonly<{ ok: true; bottles: readonly OwnBottle[]; added: number; same: number }>
  | Readonly<{ ok: false; reason: 'no-room'; free: number; wanted: number }>;

const isSame = (one: OwnBottle, other: OwnBottle) =>
  one.name === other.name && JSON.stringify(one.content) === JSON.stringify(other.content);

/**
 * Puts bottles beside those that are there. None is replaced: one that is there already, by name and content,
 * is not added twice, and one whose place is taken moves to the next free one. All or none: refused where
 * there is no room for all.
 */
export function joinBottles(have: readonly OwnBottle[], given: readonly OwnBottle[]): Joined {
  const fresh = given.filter((one) => !have.some((other) => isSame(one, other)));
  const free = ownSlots.filter((slot) => have.every((one) => one.slot !== slot));
  if (fresh.length > free.length)
    return { ok: false, reason: 'no-room', free: free.length, wanted: fresh.length };
  const kept = fresh.filter(({ slot }) => free.includes(slot));
  const rest = free.filter((slot) => kept.every((one) => one.slot !== slot));
  const moved = fresh
    .filter((one) => !kept.includes(one))
    .flatMap((one, i) => (rest[i] ? [{ ...one, slot: rest[i] }] : []));
  const place = ({ slot }: OwnBottle) => ownSlots.indexOf(slot);
  return {
    ok: true,
    bottles: [...have, ...kept, ...moved].toSorted((one, other) => place(one) - place(other)),
    added: fresh.length,
    same: given.length - fresh.length,
  };
}
