import type { Recipe } from './recipes.ts';

/** Recipes that a screen could not rule out, in columns: drops of every bottle one recipe after another, dose, quick score. */
export type KeptRecipes = Readonly<{ drops: Uint8Array; doses: Uint8Array; scores: Float64Array }>;

/** Columns that grow. */
export function keptRecipes(bottleCount: number) {
  let room = 1024;
  let count = 0;
  let columns = { drops: new Uint8Array(room * bottleCount), doses: new Uint8Array(room), scores: new Float64Array(room) };
  return {
    add: (recipe: Uint8Array, dose: number, score: number): void => {
      if (count === room) {
        room *= 2;
        const next = { drops: new Uint8Array(room * bottleCount), doses: new Uint8Array(room), scores: new Float64Array(room) };
        next.drops.set(columns.drops);
        next.doses.set(columns.doses);
        next.scores.set(columns.scores);
        columns = next;
      }
      columns.drops.set(recipe, count * bottleCount);
      columns.doses[count] = dose;
      columns.scores[count] = score;
      count++;
    },
    done: (): KeptRecipes => ({ drops: columns.drops.slice(0, count * bottleCount), doses: columns.doses.slice(0, count), scores: columns.scores.slice(0, count) }),
  };
}

/** One list from several. */
export function joinedRecipes(lists: readonly KeptRecipes[]): KeptRecipes {
  const count = lists.reduce((sum, { doses }) => sum + doses.length, 0);
  const width = lists.reduce((sum, { drops }) => sum + drops.length, 0);
  const all = { drops: new Uint8Array(width), doses: new Uint8Array(count), scores: new Float64Array(count) };
  let at = 0;
  let place = 0;
  for (const { drops, doses, scores } of lists) {
    all.drops.set(drops, place);
    all.doses.set(doses, at);
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
