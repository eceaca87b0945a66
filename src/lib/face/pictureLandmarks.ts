import type { BrowMark, FacePair, FaceSingle, Side } from '../mapping/marks/markSet.ts';
import { posedSolid, type CameraMm, type HeadPose } from '../mapping/pose/headPose.ts';
import { betweenPupils, depthMm } from '../mapping/pose/modelHead.ts';
import { pictureOf } from '../mapping/pose/pinhole.ts';
import type { Form } from './form.ts';
import { outward, type Landmarks, type SideSpots } from './landmarks.ts';
import type { Spot } from './spot.ts';

/** Between the pupils, in front of the axis about which a head turns. */
const eye = { xMm: 0, yMm: 0, zMm: betweenPupils.zMm };

/** Where a spot of the upright face appears, when it stands so far before the pupils (behind: negative). */
function seenSpot([xMm, yMm]: Spot, aheadMm: number, pose: HeadPose): Spot {
  const seen = pictureOf(posedSolid({ xMm, yMm, zMm: eye.zMm + aheadMm }, pose), eye, pose.cameraMm);
  return [seen.xMm, seen.yMm];
}

/**
 * The landmarks of a face as one picture shows them. A practice face has no depth of its own: each mark takes
 * the depth of its namesake on the model head. Straight and far, the landmarks come back as they are.
 */
export function pictureLandmarks(landmarks: Landmarks, pose: HeadPose): Landmarks {
  const side = (name: Side): SideSpots => {
    const way = outward(name);
    const seen = (mark: FacePair | BrowMark): Spot => {
      const [u, v] = landmarks[name][mark];
      const [x, y] = seenSpot([way * u, v], depthMm(mark), pose);
      return [way * x, y];
    };
    return {
      innerCorner: seen('innerCorner'),
      outerCorner: seen('outerCorner'),
      pupil: seen('pupil'),
      noseWing: seen('noseWing'),
      frontLower: seen('frontLower'),
      frontTop: seen('frontTop'),
      archTop: seen('archTop'),
      archLower: seen('archLower'),
      tail: seen('tail'),
    };
  };
  const middle = (mark: FaceSingle): Spot => seenSpot(landmarks.middle[mark], depthMm(mark), pose);
  return {
    right: side('right'),
    left: side('left'),
    middle: {
      glabella: middle('glabella'),
      nasion: middle('nasion'),
      subnasale: middle('subnasale'),
      chin: middle('chin'),
    },
  };
}

/** Where the face's own middle appears at a height of the upright face, with the depth of the glabella. */
export function middleInPicture(v: number, pose: HeadPose): Spot {
  return seenSpot([0, v], depthMm('glabella'), pose);
}

/** The sides of the head and the jaw lie so far behind the pupils (drawn by eye), mm. */
const sidesBehindMm = 45;

/**
 * The head's outline as a camera sees it: from near, cheeks and jaw fall back behind the face; the skull half
 * as much, so that the crown stays round.
 */
export function pictureForm(form: Form, cameraMm: CameraMm): Form {
  const size = pictureOf({ xMm: 1, yMm: 0, zMm: eye.zMm - sidesBehindMm }, eye, cameraMm).xMm;
  return {
    ...form,
    skullMm: (form.skullMm * (1 + size)) / 2,
    cheekMm: form.cheekMm * size,
    jawMm: form.jawMm * size,
  };
}
