/** The mix with a share (0 to 1) of skin covered, held to what that page takes: 5 to 100 %. */
export function mixAddress(share: number): string {
  return `/calculators/mix-by-drops/?coverage=${Math.round(Math.min(100, Math.max(5, 100 * share)))}`;
}
