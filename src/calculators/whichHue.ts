import { hueCosine } from '#lib/colour/spaces/hueCosine.ts';
import { choiceField } from './fields.ts';
import { hueBottles, oldHueCases, type OldHue, type OldHueCase } from '#lib/colour/old/oldHueCases.ts';
import type { Calculator } from './spec.ts';

const skins = ['l72', 'l63', 'l54', 'l45', 'l36'] as const;
export type WhichHueState = Readonly<{ skin: (typeof skins)[number]; old: OldHue }>;
export type HueRow = Readonly<{ id: string; cosine: number; move: OldHueCase['skin'] }>;
export type WhichHue = Readonly<{ shown: OldHueCase; wayA: number; wayB: number; rows: readonly HueRow[] }>;

/** The way from the old work back to the bare skin, in red and yellow. */
const wayOf = ({ skin, today }: OldHueCase) => [skin[1] - today[1], skin[2] - today[2]] as const;

/** A bottle by what one small dose does in a case, with how nearly it points back. */
export function hueRow(shown: OldHueCase, id: string, move: HueRow['move']): HueRow {
  const [a, b] = wayOf(shown);
  return { id, move, cosine: hueCosine({ l: 0, a: move[1], b: move[2] }, { l: 0, a, b }) ?? 0 };
}

/**
 * Which of five bottles takes an old hue away, in five skins: worked out by the model beforehand. Best
 * direction first.
 */
export const whichHue: Calculator<WhichHueState, WhichHue> = {
  id: 'which-hue',
  fields: {
    skin: choiceField('skin', 'l54', skins),
    old: choiceField<OldHue>('old', 'grey-blue', ['grey-blue', 'green', 'violet', 'pink', 'orange']),
  },
  solve: (state) => {
    const shown =
      oldHueCases.find(({ old, skin: [l] }) => old === state.old && `l${l}` === state.skin) ?? oldHueCases[0];
    const [wayA, wayB] = wayOf(shown);
    const rows = hueBottles.map((id, i) => hueRow(shown, id, shown.moves[i] ?? shown.moves[0]));
    return { shown, wayA, wayB, rows: rows.toSorted((one, other) => other.cosine - one.cosine) };
  },
};
