import { skinOptics, type SkinOptics } from '#lib/colour/layers/skinOptics.ts';

/** Invented skins from light to deep. */
export const skins = (
  [
    [72, 7, 14],
    [63, 10, 19],
    [54, 10, 18],
    [44, 12, 17],
    [36, 11, 15],
  ] as const
).map(([l, a, b]): SkinOptics => {
  const optics = skinOptics({ l, a, b });
  if (!optics.ok) throw new Error(optics.reason);
  return optics;
});
