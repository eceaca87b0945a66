import { midlineFromPairs } from './mapping/midlineFromPairs.ts';
import { whichMarkNotToTrust } from './mapping/whichMarkNotToTrust.ts';
import { levelReference } from './mapping/levelReference.ts';
import { tilt } from './mapping/tilt.ts';
import { restOrRaised } from './mapping/restOrRaised.ts';
import { postureMismatch } from './mapping/postureMismatch.ts';
import { frontByThreeAnchors } from './mapping/frontByThreeAnchors.ts';
import { tailChecks } from './mapping/tailChecks.ts';
import { archByRule } from './mapping/archByRule.ts';
import { whereNotToDraw } from './mapping/whereNotToDraw.ts';
import { thicknessAlongTheNormal } from './mapping/thicknessAlongTheNormal.ts';
import { flippedSelfie } from './mapping/flippedSelfie.ts';
import { useOrRefuse } from './mapping/useOrRefuse.ts';
import { realOrNot } from './mapping/realOrNot.ts';
import { ownTechnicalError } from './mapping/ownTechnicalError.ts';
import { afterTheFirstPass } from './mapping/afterTheFirstPass.ts';
import { changeNothing } from './mapping/changeNothing.ts';
import { ita } from './colour/ita.ts';
import { hueLean } from './colour/hueLean.ts';
import { readBeforeNumbing } from './colour/readBeforeNumbing.ts';
import { inkLabel } from './colour/inkLabel.ts';
import { dropsToRatio } from './colour/dropsToRatio.ts';
import { simplestRecipe } from './colour/simplestRecipe.ts';
import { neutraliseDirection } from './colour/neutraliseDirection.ts';
import { greenTrap } from './colour/greenTrap.ts';
import { doNotCover } from './colour/doNotCover.ts';
import { lamp } from './colour/lamp.ts';
import { coverageFromStrokes } from './skin/coverageFromStrokes.ts';
import { coverageFromDots } from './skin/coverageFromDots.ts';
import { widening } from './skin/widening.ts';

/**
 * Every skill by its id, under its strand, in teaching order. This is the list: what is shown, asked and pinned
 * follows from it.
 */
const byStrand = {
  Mapping: {
    'midline-from-pairs': midlineFromPairs,
    'which-mark-not-to-trust': whichMarkNotToTrust,
    'level-reference': levelReference,
    tilt,
    'rest-or-raised': restOrRaised,
    'posture-mismatch': postureMismatch,
    'front-by-three-anchors': frontByThreeAnchors,
    'tail-checks': tailChecks,
    'arch-by-rule': archByRule,
    'where-not-to-draw': whereNotToDraw,
    'thickness-along-the-normal': thicknessAlongTheNormal,
    'flipped-selfie': flippedSelfie,
    'use-or-refuse': useOrRefuse,
    'real-or-not': realOrNot,
    'own-technical-error': ownTechnicalError,
    'after-the-first-pass': afterTheFirstPass,
    'change-nothing': changeNothing,
  },
  'Colour theory': {
    ita,
    'hue-lean': hueLean,
    'read-before-numbing': readBeforeNumbing,
    'ink-label': inkLabel,
    'drops-to-ratio': dropsToRatio,
    'simplest-recipe': simplestRecipe,
    'neutralise-direction': neutraliseDirection,
    'green-trap': greenTrap,
    'do-not-cover': doNotCover,
    lamp,
  },
  'Skin healing': {
    'coverage-from-strokes': coverageFromStrokes,
    'coverage-from-dots': coverageFromDots,
    widening,
  },
} as const;

/** Every skill by its id, in teaching order. */
export const skills = {
  ...byStrand.Mapping,
  ...byStrand['Colour theory'],
  ...byStrand['Skin healing'],
} as const;

export type SkillId = keyof typeof skills;

const isSkill = (id: string): id is SkillId => Object.hasOwn(skills, id);

/** Id, version, strand, name and one sentence of every skill, in teaching order: for lists. */
export const skillList = Object.entries(byStrand).flatMap(([strand, ofStrand]) =>
  Object.keys(ofStrand)
    .filter(isSkill)
    .map((id) => {
      const { version, words } = skills[id];
      return { id, version, strand, name: words.name, summary: words.summary };
    }),
);
