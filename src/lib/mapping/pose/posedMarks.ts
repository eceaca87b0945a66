import type { PointMm } from '../../geometry/point.ts';
import { mirroredSolid } from '../../geometry/solid.ts';
import type { BrowMark, FacePair, FaceSingle, MarkSet, PairMarks } from '../marks/markSet.ts';
import type { HeadPose } from './headPose.ts';
import { lowerTailOnHead, pairOnHead, singleOnHead } from './modelHead.ts';
import { posedPoint } from './posedPoint.ts';

/** The marks that a picture of the exactly symmetric model head shows in this pose: face at rest, sitting. */
export function posedMarks(pose: HeadPose): MarkSet {
  const pair = (mark: FacePair | BrowMark): PairMarks => ({
    right: posedPoint(pairOnHead(mark, 'right'), pose),
    left: posedPoint(pairOnHead(mark, 'left'), pose),
  });
  const single = (mark: FaceSingle): PointMm => posedPoint(singleOnHead(mark), pose);
  return {
    pairs: {
      innerCorner: pair('innerCorner'),
      outerCorner: pair('outerCorner'),
      pupil: pair('pupil'),
      noseWing: pair('noseWing'),
    },
    singles: {
      glabella: single('glabella'),
      nasion: single('nasion'),
      subnasale: single('subnasale'),
      chin: single('chin'),
    },
    // Written out: this much is sent to every reader, the rest of the reading only when something moves.
    brows: {
      frontLower: pair('frontLower'),
      frontTop: pair('frontTop'),
      archTop: pair('archTop'),
      archLower: pair('archLower'),
      tail: pair('tail'),
    },
    taken: { pose: 'rest', posture: 'sitting', skin: 'normal' },
  };
}

/** The ends of the brows' lower edges in the same picture. */
export function posedLowerTail(pose: HeadPose): PairMarks {
  return { right: posedPoint(mirroredSolid(lowerTailOnHead), pose), left: posedPoint(lowerTailOnHead, pose) };
}
