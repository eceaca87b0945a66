import { bottleIds, type BottleId } from '#lib/colour/pigment/bottleIds.ts';
import type { Lamp } from '#lib/colour/spectrum/lamps.ts';
import { type OwnSlot, ownSlots } from '#lib/colour/own/ownSlots.ts';
import { choiceField, numberField } from './fields.ts';
import type { OldWork } from '#lib/colour/old/oldWorks.ts';
import { skinFields } from './skinFields.ts';
import type { Calculator, Field } from './spec.ts';

export type DropFields = Readonly<Record<BottleId, number>>;
/** A mix of the palette in one skin: what Mix by drops shares with whatever asks about such a mix. */
export type PaletteMix = DropFields &
  Readonly<{
    skinL: number;
    skinA: number;
    skinB: number;
    oldWork: OldWork;
    dose: number;
    depth: number;
    coverage: number;
  }>;
/** Drops of the bottles of one's own. */
export type OwnDrops = Readonly<Record<OwnSlot, number>>;
export type MixByDropsState = PaletteMix & OwnDrops & Readonly<{ lamp: Lamp }>;

/** The brown mix the page opens on: three drops yellow-heavy brown, one drop orange. */
const startDrops: Partial<DropFields> = { 'brown-yellow-heavy': 3, orange: 1 };

function dropsOf<K extends string>(
  ids: readonly K[],
  start?: Readonly<Partial<Record<K, number>>>,
): { readonly [I in K]: Field<number> } {
  const fields: Partial<Record<K, Field<number>>> = {};
  for (const id of ids)
    fields[id] = numberField(id, start?.[id] ?? 0, { unit: '1', lo: 0, hi: 12, step: 1, decimals: 0 });
  if (!hasEvery(ids, fields)) throw new Error('A bottle has no field.');
  return fields;
}

function hasEvery<K extends string>(
  ids: readonly K[],
  fields: Partial<Record<K, Field<number>>>,
): fields is Record<K, Field<number>> {
  return ids.every((id) => fields[id] !== undefined);
}

/** Drops of the palette, the skin and the dose. */
export const paletteFields = {
  ...dropsOf(bottleIds, startDrops),
  ...skinFields,
  dose: numberField('dose', 0.3, { unit: '1', lo: 0.02, hi: 0.8, step: 0.05, decimals: 2 }),
};

/** Drops of the bottles of one's own: none until somebody has one. */
export const ownFields = dropsOf(ownSlots);

/** The inputs of the drop mix, without its sum: the sum is fetched at the first change. */
export const mixByDropsFields: Calculator<MixByDropsState, undefined> = {
  id: 'mix-by-drops',
  fields: {
    ...paletteFields,
    ...ownFields,
    lamp: choiceField<Lamp>('lamp', 'D65', ['D65', 'D50', 'A', 'LED-B3']),
  },
  solve: () => undefined,
};

/** The lamp that daylight is compared with: the one chosen, and tungsten where daylight was chosen. */
export function lookAgainUnder(lamp: Lamp): Lamp {
  return lamp === 'D65' ? 'A' : lamp;
}
