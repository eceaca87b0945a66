/**
 * The longer part of a line cut so that whole to longer part is as longer part to shorter (Euclid VI,
 * definition 3): about 0.618.
 */
export const goldenShare = (Math.sqrt(5) - 1) / 2;

/**
 * The same cut counted from the other end: about 0.382. Half of the confusion about the golden section is
 * which end was meant.
 */
export const goldenShareFromTail = 1 - goldenShare;
