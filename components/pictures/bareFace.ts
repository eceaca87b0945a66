import { equalFace } from '#lib/face/equalFace.ts';
import type { Face } from '#lib/face/face.ts';

const { face } = equalFace;

/** The equal face without hair: old work and outlines are what is looked at. */
export const bareFace: Face = {
  ...face,
  form: { ...face.form, browHair: { ...face.form.browHair, count: 0 } },
};
