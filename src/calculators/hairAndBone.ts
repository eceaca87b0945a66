import { underOutline, type ReadUnder } from '#lib/mapping/under/underOutline.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

export type Cowlick = 'none' | 'turned';
/** Hair: mm from the outline's front. Bone: its edge over (+) or under (−) the outline's lower edge, mm. */
export type HairAndBoneState = Readonly<{
  hairFrom: number;
  hairTo: number;
  thinFrom: number;
  boneArch: number;
  boneTail: number;
  cowlick: Cowlick;
  cowlickAt: number;
}>;

/** The left outline of the level demonstration face: front to tail, and the arch, mm from the front. */
export const plannedLeft = { lengthMm: 40.2, archMm: 25.3 } as const;

const alongBrow = (key: string, start: number, lo: number, hi: number) =>
  numberField(key, start, { unit: 'mm', lo, hi, step: 0.5, decimals: 1 });

/** What lies under a planned outline: hair, bone, both, or nothing. */
export const hairAndBone: Calculator<HairAndBoneState, ReadUnder> = {
  id: 'hair-and-bone',
  fields: {
    hairFrom: alongBrow('hairFrom', 2, 0, 20),
    hairTo: alongBrow('hairTo', 29, 8, 42),
    thinFrom: alongBrow('thinFrom', 22, 0, 42),
    boneArch: alongBrow('boneArch', -1.5, -8, 8),
    boneTail: alongBrow('boneTail', 2, -8, 8),
    cowlick: choiceField<Cowlick>('cowlick', 'turned', ['none', 'turned']),
    cowlickAt: alongBrow('cowlickAt', 4, 0, 20),
  },
  solve: ({ hairFrom, hairTo, thinFrom, boneArch, boneTail }) =>
    underOutline({
      bone: { ...plannedLeft, atArchMm: boneArch, atTailMm: boneTail },
      hair: { fromMm: hairFrom, toMm: hairTo },
      thinFromMm: thinFrom,
    }),
};
