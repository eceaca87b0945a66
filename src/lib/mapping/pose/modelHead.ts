import { mirroredSolid, solidPoint, type SolidPoint } from '../../geometry/solid.ts';
import { canonicalFace } from '../../tables/canonicalFace.ts';
import {
  browMarks,
  facePairs,
  type BrowMark,
  type FacePair,
  type FaceSingle,
  type Side,
} from '../marks/markSet.ts';

const { left, middle } = canonicalFace;

/** Where the paired marks lie on the model head, left side. The tail is the end of the upper edge. */
const leftMarks: Readonly<Record<FacePair | BrowMark, SolidPoint>> = {
  innerCorner: solidPoint(left.innerCorner),
  outerCorner: solidPoint(left.outerCorner),
  pupil: solidPoint(left.pupil),
  noseWing: solidPoint(left.noseWing),
  frontLower: solidPoint(left.browBase[0]),
  frontTop: solidPoint(left.browTop[0]),
  archTop: solidPoint(left.browTop[2]),
  archLower: solidPoint(left.browBase[2]),
  tail: solidPoint(left.browTop[4]),
};

const middleMarks: Readonly<Record<FaceSingle, SolidPoint>> = {
  glabella: solidPoint(middle.glabella),
  nasion: solidPoint(middle.nasion),
  subnasale: solidPoint(middle.subnasale),
  chin: solidPoint(middle.chin),
};

/** A paired mark of the model head in space. */
export function pairOnHead(mark: FacePair | BrowMark, side: Side): SolidPoint {
  return side === 'left' ? leftMarks[mark] : mirroredSolid(leftMarks[mark]);
}

/** A middle mark of the model head in space. */
export function singleOnHead(mark: FaceSingle): SolidPoint {
  return middleMarks[mark];
}

/** The end of the brow's lower edge, left side: what "tail against front" is read at. */
export const lowerTailOnHead: SolidPoint = solidPoint(left.browBase[4]);

/**
 * Midway between the pupils: a picture's scale is true in the plane through it, and the camera stands at its
 * height.
 */
export const betweenPupils: SolidPoint = { ...leftMarks.pupil, xMm: 0 };

/** How far a mark lies before the pupils, mm; behind them it is negative. */
export function depthMm(mark: FacePair | BrowMark | FaceSingle): number {
  const isPaired = (name: string): name is FacePair | BrowMark =>
    [...facePairs, ...browMarks].some((paired) => paired === name);
  return (isPaired(mark) ? leftMarks[mark] : middleMarks[mark]).zMm - betweenPupils.zMm;
}

const { frontTop, archTop, tail, frontLower } = leftMarks;

/**
 * The model head's brow in a straight picture from far away: upper length, the arch's share of it, lower tail
 * above lower front.
 */
export const straightBrow = {
  lengthMm: tail.xMm - frontTop.xMm,
  archShare: (archTop.xMm - frontTop.xMm) / (tail.xMm - frontTop.xMm),
  tailOverFrontMm: lowerTailOnHead.yMm - frontLower.yMm,
} as const;
