import type { Face } from '#lib/face/face.ts';
import { drawFace, type FacePicture } from './face/drawFace.ts';
import type { FaceView } from './face/view.ts';

const drawn = new WeakMap<Face, Map<string, FacePicture>>();

/** A face's picture, drawn once for all pages of a build: the same face stands in a lesson, on its calculator's page and on the sheets. */
export function drawnFace(face: Face, view: FaceView, seed: number): FacePicture {
  const ofFace = drawn.get(face) ?? new Map<string, FacePicture>();
  drawn.set(face, ofFace);
  const key = `${view} ${seed}`;
  const picture = ofFace.get(key) ?? drawFace(face, view, seed);
  ofFace.set(key, picture);
  return picture;
}
