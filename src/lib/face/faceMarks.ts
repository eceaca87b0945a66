import type { PointMm } from '../geometry/point.ts';
import type { BrowMark, FacePair, MarkSet, PairMarks, Taken } from '../mapping/marks/markSet.ts';
import type { Spot } from './spot.ts';
import { outward, type Landmarks, type SideSpots } from './landmarks.ts';
import { rolled, rolledPoint } from './roll.ts';

const atRest: Taken = { pose: 'rest', posture: 'sitting', skin: 'normal' };

/** The marks of a face as they lie in the picture (y up), the head rolled by so many degrees. */
export function faceMarks(landmarks: Landmarks, rollDeg: number, taken: Taken = atRest): MarkSet {
  const pair = (mark: FacePair | BrowMark): PairMarks => ({
    right: rolledPoint(seenFromFront('right', landmarks.right[mark]), rollDeg),
    left: rolledPoint(seenFromFront('left', landmarks.left[mark]), rollDeg),
  });
  const { glabella, nasion, subnasale, chin } = landmarks.middle;
  return {
    pairs: {
      innerCorner: pair('innerCorner'),
      outerCorner: pair('outerCorner'),
      pupil: pair('pupil'),
      noseWing: pair('noseWing'),
    },
    singles: {
      glabella: rolledPoint(glabella, rollDeg),
      nasion: rolledPoint(nasion, rollDeg),
      subnasale: rolledPoint(subnasale, rollDeg),
      chin: rolledPoint(chin, rollDeg),
    },
    brows: {
      frontLower: pair('frontLower'),
      frontTop: pair('frontTop'),
      archTop: pair('archTop'),
      archLower: pair('archLower'),
      tail: pair('tail'),
    },
    taken,
  };
}

/**
 * The way back: landmarks of a marked face when its roll is known, so that a drawing can stand exactly on
 * given marks.
 */
export function landmarksOf({ pairs, singles, brows }: MarkSet, rollDeg: number): Landmarks {
  const upright = ({ xMm, yMm }: PointMm): Spot => rolled([xMm, yMm], -rollDeg);
  const side = (name: 'right' | 'left'): SideSpots => {
    const spot = (pair: PairMarks): Spot => seenFromFront(name, upright(pair[name]));
    return {
      innerCorner: spot(pairs.innerCorner),
      outerCorner: spot(pairs.outerCorner),
      pupil: spot(pairs.pupil),
      noseWing: spot(pairs.noseWing),
      frontLower: spot(brows.frontLower),
      frontTop: spot(brows.frontTop),
      archTop: spot(brows.archTop),
      archLower: spot(brows.archLower),
      tail: spot(brows.tail),
    };
  };
  return {
    right: side('right'),
    left: side('left'),
    middle: {
      glabella: upright(singles.glabella),
      nasion: upright(singles.nasion),
      subnasale: upright(singles.subnasale),
      chin: upright(singles.chin),
    },
  };
}

/** Outward distance to picture x, or back: the right side's outward is the picture's left. */
function seenFromFront(side: 'right' | 'left', [u, v]: Spot): Spot {
  return [outward(side) * u, v];
}
