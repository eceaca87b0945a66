import type { Recipe } from './recipes.ts';

/**
 * Recipes that a screen could not rule out, in columns: drops of every bottle one recipe after another, dose,
 * group (its number of drops and of bottles, scoreWindow.ts), quick score.
 */
export type KeptRecipes = Readonly<{
  drops: Uint8Array;
  doses: Uint8Array;
  groups: Uint16Array;
  scores: Float64Array;
}>;

const firstRoom = 1024;

/**
 * Columns that grow, but only when recipes whose score has since come to lie over the limit of their group
 * are let go.
 */
export function keptRecipes(bottleCount: number, limits: Float64Array) {
  let room = firstRoom;
  let count = 0;
  const columnsFor = (size: number) => ({
    drops: new Uint8Array(size * bottleCount),
    doses: new Uint8Array(size),
    groups: new Uint16Array(size),
    scores: new Float64Array(size),
  });
  let columns = columnsFor(room);
  const letGo = (): void => {
    let to = 0;
    for (let from = 0; from < count; from++) {
      if ((columns.scores[from] ?? 0) > (limits[columns.groups[from] ?? 0] ?? 0)) continue;
      columns.drops.copyWithin(to * bottleCount, from * bottleCount, (from + 1) * bottleCount);
      columns.doses[to] = columns.doses[from] ?? 0;
      columns.groups[to] = columns.groups[from] ?? 0;
      columns.scores[to] = columns.scores[from] ?? 0;
      to++;
    }
    count = to;
  };
  const grow = (): void => {
    room *= 2;
    const next = columnsFor(room);
    next.drops.set(columns.drops);
    next.doses.set(columns.doses);
    next.groups.set(columns.groups);
    next.scores.set(columns.scores);
    columns = next;
  };
  return {
    add: (recipe: Uint8Array, dose: number, group: number, score: number): void => {
      if (count === room) {
        letGo();
        if (2 * count > room) grow();
      }
      columns.drops.set(recipe, count * bottleCount);
      columns.doses[count] = dose;
      columns.groups[count] = group;
      columns.scores[count] = score;
      count++;
    },
    done: (): KeptRecipes => {
      letGo();
      return {
        drops: columns.drops.slice(0, count * bottleCount),
        doses: columns.doses.slice(0, count),
        groups: columns.groups.slice(0, count),
        scores: columns.scores.slice(0, count),
      };
    },
  };
}

/** One list from several. */
export function joinedRecipes(lists: readonly KeptRecipes[]): KeptRecipes {
  const count = lists.reduce((sum, { doses }) => sum + doses.length, 0);
  const width = lists.reduce((sum, { drops }) => sum + drops.length, 0);
  const all = {
    drops: new Uint8Array(width),
    doses: new Uint8Array(count),
    groups: new Uint16Array(count),
    scores: new Float64Array(count),
  };
  let at = 0;
  let place = 0;
  for (const { drops, doses, groups, scores } of lists) {
    all.drops.set(drops, place);
    all.doses.set(doses, at);
    all.groups.set(groups, at);
    all.scores.set(scores, at);
    place += drops.length;
    at += doses.length;
  }
  return all;
}

/** The recipe at a place of the list. */
export function recipeAt({ drops }: KeptRecipes, place: number, bottleCount: number): Recipe {
  return Array.from(drops.subarray(place * bottleCount, (place + 1) * bottleCount));
}
