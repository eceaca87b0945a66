import { bottleIds, type BottleId } from '#lib/colour/bottleIds.ts';
import type { Lamp } from '#lib/colour/lamps.ts';
import { choiceField, numberField } from './fields.ts';
import { type OldWork, skinFields } from './skinFields.ts';
import type { Calculator, Field } from './spec.ts';

export type DropFields = Readonly<Record<BottleId, number>>;
export type MixByDropsState = DropFields &
  Readonly<{ skinL: number; skinA: number; skinB: number; oldWork: OldWork; dose: number; depth: number; coverage: number; lamp: Lamp }>;

/** The brown mix the page opens on: three drops yellow-heavy brown, one drop orange. */
const startDrops: Partial<DropFields> = { 'brown-yellow-heavy': 3, orange: 1 };

function dropFields(): { readonly [K in BottleId]: Field<number> } {
  const field = (id: BottleId) => numberField(id, startDrops[id] ?? 0, { unit: '1', lo: 0, hi: 12, step: 1, decimals: 0 });
  const fields: Partial<Record<BottleId, Field<number>>> = {};
  for (const id of bottleIds) fields[id] = field(id);
  if (!hasEveryBottle(fields)) throw new Error('A bottle has no field.');
  return fields;
}

function hasEveryBottle(fields: Partial<Record<BottleId, Field<number>>>): fields is Record<BottleId, Field<number>> {
  return bottleIds.every((id) => fields[id] !== undefined);
}

/** The inputs of the drop mix, without its sum: the sum is fetched at the first change. */
export const mixByDropsFields: Calculator<MixByDropsState, undefined> = {
  id: 'mix-by-drops',
  fields: {
    ...dropFields(),
    ...skinFields,
    dose: numberField('dose', 0.3, { unit: '1', lo: 0.02, hi: 0.8, step: 0.05, decimals: 2 }),
    lamp: choiceField<Lamp>('lamp', 'D65', ['D65', 'D50', 'A', 'LED-B3']),
  },
  solve: () => undefined,
};

/** The lamp that daylight is compared with: the one chosen, and tungsten where daylight was chosen. */
export function lookAgainUnder(lamp: Lamp): Lamp {
  return lamp === 'D65' ? 'A' : lamp;
}
