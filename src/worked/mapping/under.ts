import { lengthOfMm } from '#lib/mapping/under/stretch.ts';
import { underOutline } from '#lib/mapping/under/underOutline.ts';
import { worked } from '../worked.ts';

/** Invented: the potter's tail. Bone edge −1 mm at the arch, +2 mm at the tail. */
const nothingUnderTheTail = worked({
  id: 'nothing-under-the-tail',
  inputs: { outline: 42, arch: 27, hairFrom: 1, hairTo: 30, boneArch: -1, boneTail: 2 },
  run: ({ outline, arch, hairFrom, hairTo, boneArch, boneTail }) => {
    const read = underOutline({
      bone: { lengthMm: outline, archMm: arch, atArchMm: boneArch, atTailMm: boneTail },
      hair: { fromMm: hairFrom, toMm: hairTo },
      thinFromMm: hairTo,
    });
    if (!read.ok) throw new Error('The worked example has no brow to read.');
    const { nothing, offBone } = read.under;
    return {
      span: outline - arch,
      rise: boneTail - boneArch,
      under: -boneArch,
      leaves: offBone[0]?.fromMm ?? outline,
      from: nothing[0]?.fromMm ?? outline,
      answer: lengthOfMm(nothing),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['shape-sits-on-something'],
});

/** Worked examples about hair and bone. */
export const underWorked = {
  'nothing-under-the-tail': nothingUnderTheTail,
} as const;
