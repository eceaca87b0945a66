import { hueCosine } from '#lib/colour/hueCosine.ts';
import { choiceField } from './fields.ts';
import { type HueBottle, hueBottles, oldHueCases, type OldHue, type OldHueCase } from './oldHueCases.ts';
import type { Calculator } from './spec.ts';

const skins = ['l72', 'l63', 'l54', 'l45', 'l36'] as const;
export type WhichHueState = Readonly<{ skin: (typeof skins)[number]; old: OldHue }>;
export type HueRow = Readonly<{ id: HueBottle; cosine: number; move: OldHueCase['skin'] }>;
export type WhichHue = Readonly<{ shown: OldHueCase; wayA: number; wayB: number; rows: readonly HueRow[] }>;

/** Which of five bottles takes an old hue away, in five skins: worked out by the model beforehand. Best direction first. */
export const whichHue: Calculator<WhichHueState, WhichHue> = {
  id: 'which-hue',
  fields: { skin: choiceField('skin', 'l54', skins), old: choiceField<OldHue>('old', 'grey-blue', ['grey-blue', 'green', 'violet', 'pink', 'orange']) },
  solve: (state) => {
    const shown = oldHueCases.find(({ old, skin: [l] }) => old === state.old && `l${l}` === state.skin) ?? oldHueCases[0];
    const [wayA, wayB] = [shown.skin[1] - shown.today[1], shown.skin[2] - shown.today[2]];
    const rows = hueBottles.map((id, i) => {
      const move = shown.moves[i] ?? shown.moves[0];
      return { id, move, cosine: hueCosine({ l: 0, a: move[1], b: move[2] }, { l: 0, a: wayA, b: wayB }) ?? 0 };
    });
    return { shown, wayA, wayB, rows: rows.toSorted((one, other) => other.cosine - one.cosine) };
  },
};
