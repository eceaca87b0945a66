/**
 * Strokes of the example brow that cover one per cent once spread: 287.6 mm² over 8 mm times 0.35 mm. Written
 * out here, because the values it is made of would bring the strokes' own library to every page with a skin;
 * a test holds it to them.
 */
const strokesAPercent = 287.6 / (8 * 0.35) / 100;

/** How many strokes, once spread, cover so many per cent, rounded up; and the page that draws them. */
export function strokesFor(coverage: number): Readonly<{ count: number; address: string }> {
  const count = Math.ceil(coverage * strokesAPercent - 1e-9);
  return { count, address: `/calculators/strokes-and-dots/?count=${count}` };
}
