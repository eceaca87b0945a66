import { drawFrom, drawWhole } from '../quantities/seed.ts';
import type { Rung } from './ladder.ts';

/** One question of a mixed set: which skill, on which rung, and its index in the mixed series. */
export type MixedItem<Id extends string> = Readonly<{ id: Id; rung: Rung; index: number }>;

/**
 * A set of `length` questions: due skills first, then the others, shuffled by how many answers lie behind
 * (`done`).
 * With two skills or more none comes twice in a row. For `done` 0 the order is the given one, so a first page
 * can be built ahead.
 */
export function mixedSet<Id extends string>(
  ids: readonly Id[],
  due: readonly Id[],
  done: number,
  length: number,
): readonly MixedItem<Id>[] {
  const draw = drawFrom(done);
  const others = ids.filter((id) => !due.includes(id));
  const shuffled =
    done === 0
      ? others
      : others
          .map((id) => ({ id, at: drawWhole(draw, 0, 1_000_000) }))
          .sort((a, b) => a.at - b.at)
          .map(({ id }) => id);
  const order = [...ids.filter((id) => due.includes(id)), ...shuffled];
  return Array.from({ length: order.length === 0 ? 0 : length }, (_, i) => i).flatMap((i) => {
    const id = order[i % order.length];
    return id === undefined
      ? []
      : [{ id, rung: i < order.length - shuffled.length ? 'review' : 'mixed', index: done + i } as const];
  });
}
