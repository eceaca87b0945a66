import { offBone, type BoneEdge } from './offBone.ts';
import { lengthOfMm, sharedBy, sharedByAll, without, type Stretch, type Stretches } from './stretch.ts';

/**
 * What was read along one brow, mm from the outline's front. Hair may begin before the outline (negative) or
 * end after it.
 */
export type UnderReading = Readonly<{ bone: BoneEdge; hair: Stretch; thinFromMm: number }>;

export type UnderOutline = Readonly<{
  lengthMm: number;
  /** Hair under the outline, thin or not, and the thin part of it. */
  hair: Stretches;
  thin: Stretches;
  /** Bare skin before the hair and after it. */
  bareFront: Stretches;
  bareTail: Stretches;
  offBone: Stretches;
  /** Neither hair nor bone: the shape sits on nothing. */
  nothing: Stretches;
}>;

export type ReadUnder =
  | Readonly<{ ok: true; under: UnderOutline }>
  | Readonly<{ ok: false; reason: 'hair-ends-before-it-begins' | 'arch-outside-outline' }>;

/**
 * Sorts one outline by what lies under it. Common practice: a shape sits on hair or on bone, or it is not
 * drawn there.
 */
export function underOutline({ bone, hair, thinFromMm }: UnderReading): ReadUnder {
  if (hair.toMm <= hair.fromMm) return { ok: false, reason: 'hair-ends-before-it-begins' };
  if (!(bone.archMm > 0 && bone.archMm < bone.lengthMm)) return { ok: false, reason: 'arch-outside-outline' };
  const whole: Stretch = { fromMm: 0, toMm: bone.lengthMm };
  const under = sharedBy(whole, hair);
  const bare = without(whole, hair);
  const off = offBone(bone);
  return {
    ok: true,
    under: {
      lengthMm: bone.lengthMm,
      hair: under,
      thin: sharedByAll(under, [{ fromMm: thinFromMm, toMm: bone.lengthMm }]),
      bareFront: bare.filter(({ toMm }) => toMm <= hair.fromMm),
      bareTail: bare.filter(({ fromMm }) => fromMm >= hair.toMm),
      offBone: off,
      nothing: sharedByAll(bare, off),
    },
  };
}

/** Part of the outline's length, 0 to 1. */
export function shareOf({ lengthMm }: Pick<UnderOutline, 'lengthMm'>, stretches: Stretches): number {
  return lengthOfMm(stretches) / lengthMm;
}
