import { defaultBrowPlan } from '#lib/face/browPlan.ts';
import { plannedFace, type Face } from '#lib/face/face.ts';
import { defaultForm } from '#lib/face/form.ts';
import { movedBrow, type BrowSpots } from '#lib/face/landmarks.ts';
import { olderPeople } from './peopleOlder.ts';
import { youngerPeople } from './peopleYounger.ts';
import type { PersonPlan, Skin } from './personPlan.ts';

export type Person = Readonly<{ face: Face; skin: Skin }>;

function personFrom({ bones, form, browHair, brow, rightMoved, rollDeg = 0, skin }: PersonPlan): Person {
  const whole = { ...form, browHair: { ...defaultForm.browHair, ...browHair } };
  const face = plannedFace(bones, whole, { ...defaultBrowPlan, ...brow }, rollDeg);
  if (!rightMoved) return { face, skin };
  const right = { ...face.landmarks.right, ...movedBrow(onlyBrow(face), rightMoved.outMm, rightMoved.upMm) };
  return { face: { ...face, landmarks: { ...face.landmarks, right } }, skin };
}

function onlyBrow({ landmarks: { right } }: Face): BrowSpots {
  const { frontLower, frontTop, archTop, archLower, tail } = right;
  return { frontLower, frontTop, archTop, archLower, tail };
}

/**
 * Twenty-four invented people. Bones, lids, hair, age and skin are mixed on purpose: no combination stands
 * for a people, inner-corner distance runs over the published range of cohort means (31.2 to 38.5 mm), and
 * skin from L* 92 to 24.
 */
export const people: readonly Person[] = [...youngerPeople, ...olderPeople].map(personFrom);
