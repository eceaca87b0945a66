import { coverageFromStrokesWords } from './coverageFromStrokes.ts';
import { coverageFromDotsWords } from './coverageFromDots.ts';
import { wideningWords } from './widening.ts';
import { whereNotToDrawWords } from './whereNotToDraw.ts';
import { archByRuleWords } from './archByRule.ts';
import { afterTheFirstPassWords } from './afterTheFirstPass.ts';
import { changeNothingWords } from './changeNothing.ts';
import { frontByThreeAnchorsWords } from './frontByThreeAnchors.ts';
import { flippedSelfieWords } from './flippedSelfie.ts';
import { levelReferenceWords } from './levelReference.ts';
import { midlineFromPairsWords } from './midlineFromPairs.ts';
import { ownTechnicalErrorWords } from './ownTechnicalError.ts';
import { postureMismatchWords } from './postureMismatch.ts';
import { realOrNotWords } from './realOrNot.ts';
import { restOrRaisedWords } from './restOrRaised.ts';
import { tailChecksWords } from './tailChecks.ts';
import { thicknessAlongTheNormalWords } from './thicknessAlongTheNormal.ts';
import { tiltWords } from './tilt.ts';
import { useOrRefuseWords } from './useOrRefuse.ts';
import { whichMarkWords } from './whichMarkNotToTrust.ts';
import { itaWords } from './ita.ts';
import { hueLeanWords } from './hueLean.ts';
import { neutraliseDirectionWords } from './neutraliseDirection.ts';
import { lampWords } from './lamp.ts';
import { greenTrapWords } from './greenTrap.ts';
import { dropsToRatioWords } from './dropsToRatio.ts';
import { simplestRecipeWords } from './simplestRecipe.ts';
import { doNotCoverWords } from './doNotCover.ts';
import { inkLabelWords } from './inkLabel.ts';
import { readBeforeNumbingWords } from './readBeforeNumbing.ts';

const listedAs = ({ name, summary }: Readonly<{ name: string; summary: string }>) => ({
  strand: 'Mapping',
  name,
  summary,
});
const colourListedAs = ({ name, summary }: Readonly<{ name: string; summary: string }>) => ({
  strand: 'Colour theory',
  name,
  summary,
});
const skinListedAs = ({ name, summary }: Readonly<{ name: string; summary: string }>) => ({
  strand: 'Skin healing',
  name,
  summary,
});

/** Name, one sentence and strand of every skill, by id, in teaching order: for lists. */
export const skillList = [
  { id: 'midline-from-pairs', ...listedAs(midlineFromPairsWords) },
  { id: 'which-mark-not-to-trust', ...listedAs(whichMarkWords) },
  { id: 'level-reference', ...listedAs(levelReferenceWords) },
  { id: 'tilt', ...listedAs(tiltWords) },
  { id: 'rest-or-raised', ...listedAs(restOrRaisedWords) },
  { id: 'posture-mismatch', ...listedAs(postureMismatchWords) },
  { id: 'front-by-three-anchors', ...listedAs(frontByThreeAnchorsWords) },
  { id: 'tail-checks', ...listedAs(tailChecksWords) },
  { id: 'arch-by-rule', ...listedAs(archByRuleWords) },
  { id: 'where-not-to-draw', ...listedAs(whereNotToDrawWords) },
  { id: 'thickness-along-the-normal', ...listedAs(thicknessAlongTheNormalWords) },
  { id: 'flipped-selfie', ...listedAs(flippedSelfieWords) },
  { id: 'use-or-refuse', ...listedAs(useOrRefuseWords) },
  { id: 'real-or-not', ...listedAs(realOrNotWords) },
  { id: 'own-technical-error', ...listedAs(ownTechnicalErrorWords) },
  { id: 'after-the-first-pass', ...listedAs(afterTheFirstPassWords) },
  { id: 'change-nothing', ...listedAs(changeNothingWords) },
  { id: 'ita', ...colourListedAs(itaWords) },
  { id: 'hue-lean', ...colourListedAs(hueLeanWords) },
  { id: 'read-before-numbing', ...colourListedAs(readBeforeNumbingWords) },
  { id: 'ink-label', ...colourListedAs(inkLabelWords) },
  { id: 'drops-to-ratio', ...colourListedAs(dropsToRatioWords) },
  { id: 'simplest-recipe', ...colourListedAs(simplestRecipeWords) },
  { id: 'neutralise-direction', ...colourListedAs(neutraliseDirectionWords) },
  { id: 'green-trap', ...colourListedAs(greenTrapWords) },
  { id: 'do-not-cover', ...colourListedAs(doNotCoverWords) },
  { id: 'lamp', ...colourListedAs(lampWords) },
  { id: 'coverage-from-strokes', ...skinListedAs(coverageFromStrokesWords) },
  { id: 'coverage-from-dots', ...skinListedAs(coverageFromDotsWords) },
  { id: 'widening', ...skinListedAs(wideningWords) },
] as const;
