/**
 * What a bottle of one's own may be made of: the same limits when it is typed and when it is read from a
 * file.
 */
export const labLimits = {
  l: { unit: '1', lo: 5, hi: 98 },
  a: { unit: '1', lo: -60, hi: 80 },
  b: { unit: '1', lo: -60, hi: 95 },
} as const;
/** Parts of one pigment, or per cent. */
export const mostParts = 1000;
/** Drops in a tint. */
export const mostTintDrops = 100;
