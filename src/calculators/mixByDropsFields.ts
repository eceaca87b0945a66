import { bottleIds, type BottleId } from '#lib/colour/bottleIds.ts';
import type { Lamp } from '#lib/colour/lamps.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator, Field } from './spec.ts';

export type OldWork = 'none' | 'grey-blue' | 'ash-grey' | 'green' | 'violet' | 'pink' | 'orange';
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
    skinL: numberField('skinL', 63, { unit: '1', lo: 25, hi: 80, step: 1, decimals: 1 }),
    skinA: numberField('skinA', 10, { unit: '1', lo: 2, hi: 20, step: 1, decimals: 1 }),
    skinB: numberField('skinB', 19, { unit: '1', lo: 5, hi: 30, step: 1, decimals: 1 }),
    oldWork: choiceField<OldWork>('oldWork', 'none', ['none', 'grey-blue', 'ash-grey', 'green', 'violet', 'pink', 'orange']),
    dose: numberField('dose', 0.3, { unit: '1', lo: 0.02, hi: 0.8, step: 0.05, decimals: 2 }),
    depth: numberField('depth', 0.1, { unit: 'mm', lo: 0.06, hi: 0.3, step: 0.01, decimals: 2 }),
    coverage: numberField('coverage', 60, { unit: '%', lo: 5, hi: 100, step: 5, decimals: 0 }),
    lamp: choiceField<Lamp>('lamp', 'D65', ['D65', 'D50', 'A', 'LED-B3']),
  },
  solve: () => undefined,
};
