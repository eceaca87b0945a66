import { coverQuestions } from './cover.ts';

/** What the rules of mapping ask. Answers: yes/no, a number, or one of the words given. */
export const mappingQuestions = [
  'midline-uses-brows',
  'midline-marks',
  'marks-not-trusted',
  'level-reference-named',
  'line-held-level',
  /** at rest, upright, on normal skin: each yes or no */
  'mapped-at-rest',
  'mapped-upright',
  'mapped-on-normal-skin',
  'brows-still-settling',
  'same-pose',
  'same-posture',
  'same-skin',
  'eyes-closed-reading',
  'fronts-measured-from',
  'thread-checked',
  'front-anchor-named',
  'tail-past-the-line',
  'tail-tip-in-the-band',
  /** 'straight-across' or 'straight-up' */
  'thickness-measured',
  'same-stations',
  'outline-told-bolder',
  'comparisons-counted',
  'own-pairs',
  /** after the first pass: 'inside', 'at' or 'past' the approved outline */
  'pigment-ends',
  'skin-swollen-now',
  'gap-mm',
  /** 'not-shown', 'few-see', 'some-see' or 'most-see' */
  'band',
  /** 'skin' or 'photo' */
  'read-from',
  /** 'height' or 'width' */
  'read-what',
  'photo-level-and-resting',
  /** 'one' or 'two' */
  'arches-planned',
  'nothing-under-a-part',
  'skin-changed-or-new-loss',
  'arch-rule-named',
  'mirror-known',
  ...coverQuestions,
  'front-and-tail-opposite',
  'camera-distance-cm',
] as const;
export type MappingQuestion = (typeof mappingQuestions)[number];
