/**
 * Object symmetry written the long way, for comparison only: reflect the whole shape, exchange the labels of
 * right and left, lay the copy back on the shape by rotation and shift (ordinary Procrustes without scaling),
 * and take the line half way between every mark and its laid-back copy (Mardia, Bookstein & Moreton 2000).
 * Shares no code with the library.
 */
export type Pair = readonly [rightX: number, rightY: number, leftX: number, leftY: number];
export type Single = readonly [x: number, y: number];

export function symmetryAxis(
  pairs: readonly Pair[],
  singles: readonly Single[],
): { angle: number; offset: number } {
  const shape: [number, number][] = [];
  const relabelled: [number, number][] = [];
  for (const [rx, ry, lx, ly] of pairs) {
    shape.push([rx, ry], [lx, ly]);
    relabelled.push([-lx, ly], [-rx, ry]);
  }
  // A pair enters the sum from both ends, a single mark once: it is put in twice to count as one pair does.
  for (const [x, y] of singles) {
    shape.push([x, y], [x, y]);
    relabelled.push([-x, y], [-x, y]);
  }
  const mean = (points: [number, number][]) =>
    [
      points.reduce((s, p) => s + p[0], 0) / points.length,
      points.reduce((s, p) => s + p[1], 0) / points.length,
    ] as const;
  const [mx, my] = mean(shape);
  const [qx, qy] = mean(relabelled);
  let sine = 0;
  let cosine = 0;
  shape.forEach(([x, y], i) => {
    const copy = relabelled[i] ?? [0, 0];
    const [a, b] = [copy[0] - qx, copy[1] - qy];
    cosine += a * (x - mx) + b * (y - my);
    sine += a * (y - my) - b * (x - mx);
  });
  // Laid back by a turn of `turn`: x → −x, then turned, is a reflection in the line whose normal stands at
  // turn / 2.
  const turn = Math.atan2(sine, cosine);
  const angle = turn / 2;
  return { angle, offset: mx * Math.cos(angle) + my * Math.sin(angle) };
}
