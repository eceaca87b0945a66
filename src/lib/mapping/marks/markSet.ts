import type { PointMm } from '../../geometry/point.ts';

/**
 * Face marks that come as a right and left pair; the brows are not among them (they never feed the midline).
 */
export const facePairs = ['innerCorner', 'outerCorner', 'pupil', 'noseWing'] as const;
/** Face marks that stand alone near the middle, top to bottom. */
export const faceSingles = ['glabella', 'nasion', 'subnasale', 'chin'] as const;
/** Five marks a brow: lower and upper front, top and lower arch, tail tip. */
export const browMarks = ['frontLower', 'frontTop', 'archTop', 'archLower', 'tail'] as const;

export type FacePair = (typeof facePairs)[number];
export type FaceSingle = (typeof faceSingles)[number];
export type BrowMark = (typeof browMarks)[number];
/** Left and right are always the client's own. */
export type Side = 'right' | 'left';

export type Pose = 'rest' | 'raised' | 'frown' | 'eyes-closed';
export type Posture = 'sitting' | 'lying';
/** The state of the skin when the marks were read. */
export type SkinState = 'normal' | 'numb' | 'swollen';

/** How a set of marks was taken; sets that differ in any of these are not compared. */
export type Taken = Readonly<{ pose: Pose; posture: Posture; skin: SkinState }>;

export type PairMarks = Readonly<Record<Side, PointMm>>;

/** Everything read off one face in one sitting, picture frame. */
export type MarkSet = Readonly<{
  pairs: Readonly<Record<FacePair, PairMarks>>;
  singles: Readonly<Record<FaceSingle, PointMm>>;
  brows: Readonly<Record<BrowMark, PairMarks>>;
  taken: Taken;
}>;
