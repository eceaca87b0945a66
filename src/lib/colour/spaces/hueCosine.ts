/** A change of colour in L*, a* and b*. */
export type Move = Readonly<{ l: number; a: number; b: number }>;

/**
 * The cosine of the angle between two moves in the a*b* plane: 1 for the same direction, 0 for square to it,
 * −1 for the opposite. Lightness does not count. Undefined where one of the two goes nowhere.
 */
export function hueCosine(one: Move, other: Move): number | undefined {
  const size = Math.hypot(one.a, one.b) * Math.hypot(other.a, other.b);
  return size > 1e-12 ? (one.a * other.a + one.b * other.b) / size : undefined;
}
