/**
 * Share covered after strokes have widened, from the share before. Side by side, the share grows as the width
 * does, up to all.
 * Crossing, what is bare now, 1 − share, is raised to the ratio of the widths: a wider stroke covers partly
 * what is covered.
 * Undefined where no such share exists.
 */
export function widened(
  share: number,
  freshMm: number,
  spreadMm: number,
  crossing: boolean,
): number | undefined {
  if (!(share >= 0 && share <= 1 && freshMm > 0 && spreadMm > 0)) return undefined;
  const ratio = spreadMm / freshMm;
  return crossing ? 1 - (1 - share) ** ratio : Math.min(1, share * ratio);
}
