import { drawFrom } from '#lib/quantities/seed.ts';

/** Strokes in a patch are spread evenly, without chance: a picture is the same everywhere. */
const spread = (i: number, step: number) => (0.5 + i * step) % 1;

/** Strokes in a patch, millimetres, as one path: upright side by side, or leaning both ways. */
export function strokePath(
  count: number,
  lengthMm: number,
  widthMm: number,
  heightMm: number,
  crossing: boolean,
): string {
  return Array.from({ length: count }, (_, i) => {
    if (!crossing) return `M${(((i + 0.5) * widthMm) / count).toFixed(2)} 0V${heightMm}`;
    const angle = (Math.PI / 180) * (60 + 60 * spread(i, 0.382));
    const [x, y] = [spread(i, 0.755) * widthMm, spread(i, 0.57) * heightMm];
    const [dx, dy] = [(Math.cos(angle) * lengthMm) / 2, (Math.sin(angle) * lengthMm) / 2];
    return `M${(x - dx).toFixed(2)} ${(y - dy).toFixed(2)}L${(x + dx).toFixed(2)} ${(y + dy).toFixed(2)}`;
  }).join('');
}

/**
 * Dots in a patch as one path of points, thrown by a seed so that they lie as chance has it; round ends make
 * them dots.
 */
export function dotPath(count: number, widthMm: number, heightMm: number): string {
  const draw = drawFrom(count);
  return Array.from(
    { length: count },
    () => `M${(draw() * widthMm).toFixed(2)} ${(draw() * heightMm).toFixed(2)}h0`,
  ).join('');
}
