import { practiceFace as insideFace } from '../face/practiceFace.ts';
import type { PracticePicture } from '../face/practicePicture.ts';
import { readAgain as insideAgain } from '../face/readAgain.ts';
import { maybe, oneOf, shape, throwing, yesOrNo, type Domain } from './domain.ts';
import * as of from './mappingDomains.ts';
import { errorMm, seed } from './units.ts';

export { leaningNoseFace } from '../face/demonstration.ts';
export type { PracticeLevel } from '../face/disturbance.ts';
export type { Face } from '../face/face.ts';
export type { BrowHair, Form, HairStyle, Lid } from '../face/form.ts';
export type { Landmarks, SideSpots } from '../face/landmarks.ts';
export type { PracticeFace } from '../face/practiceFace.ts';
export type { PracticePicture } from '../face/practicePicture.ts';
export type { Spot, Spots } from '../face/spot.ts';
export type { TrueAnswers } from '../face/trueAnswers.ts';

const levels = [0, 1, 2, 3, 4] as const;
const level: Domain<(typeof levels)[number]> = {
  complaint: (value) =>
    levels.some((one) => one === value) ? undefined : { at: '', must: 'be 0, 1, 2, 3 or 4' },
};
const picture = shape<PracticePicture>({
  kind: oneOf(['straight', 'turned', 'near']),
  pose: of.pose,
  mayJudgeWidths: yesOrNo,
});

/** A face for a drill, always the same for a seed, with its true answers. */
export const practiceFace: typeof insideFace = throwing(
  insideFace,
  'seed level picture',
  seed,
  level,
  maybe(picture),
);
/** Another reading of the same face: every mark off by its own error, then read to 0.1 mm. */
export const readAgain: typeof insideAgain = throwing(
  insideAgain,
  'truth seed temMm',
  of.markSet,
  seed,
  maybe(errorMm),
);
