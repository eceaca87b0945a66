/** Three numbers that belong together. */
export type Triple = readonly [number, number, number];

function cross([a, b, c]: Triple, [d, e, f]: Triple): Triple {
  return [b * f - c * e, c * d - a * f, a * e - b * d];
}

function dot([a, b, c]: Triple, [d, e, f]: Triple): number {
  return a * d + b * e + c * f;
}

/**
 * x, y, z with x·first + y·second + z·third = right, by Cramer's rule; undefined where the columns lie in one
 * plane.
 */
export function solve3(
  [first, second, third]: readonly [Triple, Triple, Triple],
  right: Triple,
): Triple | undefined {
  const whole = dot(first, cross(second, third));
  const size = Math.hypot(...first) * Math.hypot(...second) * Math.hypot(...third);
  if (!(Math.abs(whole) > 1e-12 * size)) return undefined;
  return [
    dot(right, cross(second, third)) / whole,
    dot(first, cross(right, third)) / whole,
    dot(first, cross(second, right)) / whole,
  ];
}
