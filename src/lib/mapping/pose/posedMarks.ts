import type { PointMm } from '../../geometry/point.ts';
import type { SolidPoint } from '../../geometry/solid.ts';
import { forBrowMarks } from '../browRecord.ts';
import type { BrowMark, FacePair, FaceSingle, MarkSet, PairMarks } from '../markSet.ts';
import { posedSolid, type HeadPose } from './headPose.ts';
import { betweenPupils, pairOnHead, singleOnHead } from './modelHead.ts';
import { pictureOf } from './pinhole.ts';

/** Nearer than this the nose comes close to the camera and no one holds a phone there, mm. */
export const leastCameraMm = 200;
/** Farther round than this the far half of the face is hidden, degrees either way. */
export const mostTurnDeg = 30;

/** A point of the model head as the camera sees it in this pose, picture mm; the straight head's pupils lie at height 0. */
export function posedPoint(point: SolidPoint, pose: HeadPose): PointMm {
  return pictureOf(posedSolid(point, pose), betweenPupils, pose.cameraMm);
}

/** The marks that a picture of the exactly symmetric model head shows in this pose: face at rest, sitting. */
export function posedMarks(pose: HeadPose): MarkSet {
  const pair = (mark: FacePair | BrowMark): PairMarks => ({
    right: posedPoint(pairOnHead(mark, 'right'), pose),
    left: posedPoint(pairOnHead(mark, 'left'), pose),
  });
  const single = (mark: FaceSingle): PointMm => posedPoint(singleOnHead(mark), pose);
  return {
    pairs: { innerCorner: pair('innerCorner'), outerCorner: pair('outerCorner'), pupil: pair('pupil'), noseWing: pair('noseWing') },
    singles: { glabella: single('glabella'), nasion: single('nasion'), subnasale: single('subnasale'), chin: single('chin') },
    brows: forBrowMarks(pair),
    taken: { pose: 'rest', posture: 'sitting', skin: 'normal' },
  };
}
