/**
 * The real roots of ax² + bx + c, in no order; one root where a is 0, none where nothing or everything is a
 * root.
 * The root of larger size comes first from the sum that does not cancel, the other from the product of the
 * two.
 */
export function quadraticRoots(a: number, b: number, c: number): readonly number[] {
  if (a === 0) return b === 0 ? [] : [-c / b];
  const discriminant = b * b - 4 * a * c;
  if (!(discriminant >= 0)) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2;
  return q === 0 ? [0] : [q / a, c / q];
}
