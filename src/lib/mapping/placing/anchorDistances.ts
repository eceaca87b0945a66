import type { Side } from '../marks/markSet.ts';
import type { PlacingMarks } from './placingMarks.ts';

/**
 * What a front can be stood above: the widest point of the nose wing, the inner eye corner, the middle of the
 * nostril.
 */
export const frontAnchors = ['nose-wing', 'inner-corner', 'nostril-middle'] as const;
export type FrontAnchor = (typeof frontAnchors)[number];

/**
 * One anchor's distance from the midline, mm: on each side, and one for both (the mean of the two sides, in
 * which a lean of the nose cancels). `leftMinusRightMm` is what a front set above its own side's mark would
 * be unequal by.
 */
export type AnchorDistance = Readonly<Record<Side, number> & { bothMm: number; leftMinusRightMm: number }>;

/** The marks that anchors are taken from. */
export type AnchorMarks = Readonly<Record<Side, Pick<PlacingMarks[Side], 'noseWing' | 'innerCorner'>>>;

/**
 * All anchors of one face. The middle of a nostril is taken at a share of the nose's half width from the
 * nose's own middle, so it leans with the nose.
 */
export function anchorDistances(
  { right, left }: AnchorMarks,
  nostrilShare: number,
): Readonly<Record<FrontAnchor, AnchorDistance>> {
  const wing = anchor(right.noseWing.uMm, left.noseWing.uMm);
  const leanMm = wing.leftMinusRightMm / 2;
  const nostrilMm = nostrilShare * wing.bothMm;
  return {
    'nose-wing': wing,
    'inner-corner': anchor(right.innerCorner.uMm, left.innerCorner.uMm),
    'nostril-middle': anchor(nostrilMm - leanMm, nostrilMm + leanMm),
  };
}

function anchor(right: number, left: number): AnchorDistance {
  return { right, left, bothMm: (right + left) / 2, leftMinusRightMm: left - right };
}
