/**
 * Signs beside a dropped brow or lid that are nobody's mapping question; one wording wherever a page speaks
 * of one.
 */
export const emergencySigns =
  'With a crooked mouth, a weak arm, trouble speaking, double vision, pupils of unequal size or a bad headache: call the emergency number now.';
