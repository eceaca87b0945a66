/**
 * What the midline itself adds, as shares of one mark's standard uncertainty: its place at the height of the
 * brows (mm for each mm), and its lean (radians for each mm). Both follow from carrying the marks through the
 * midline of an upright face (see propagate); they hardly differ from face to face, because eyes and chin set
 * them.
 */
export const midlineShare = 0.389;
export const leanSharePerMm = 0.0071;

/** √(2 + 4 m²): left minus right of two distances from one midline, for each mm of a mark. */
export function outwardDifferenceShare(): number {
  return Math.sqrt(2 + 4 * midlineShare * midlineShare);
}

/** √(2 + (a · apart)²): difference of two heights so far apart, for each mm of a mark. */
export function heightDifferenceShare(apartMm: number): number {
  return Math.hypot(Math.SQRT2, leanSharePerMm * apartMm);
}
