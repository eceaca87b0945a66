import { simplestRecipe } from '#skills/colour/simplestRecipe.ts';
import { simplestRecipeWords } from '#words/skills/simplestRecipe.ts';
import type { ProblemSettings } from '../bound.ts';
import { DropsAgainstDifference } from '../pictures/DropsAgainstDifference.tsx';
import { Problem } from '../Problem.tsx';

export default function SimplestRecipe(settings: ProblemSettings) {
  return (
    <Problem
      skill={simplestRecipe}
      words={simplestRecipeWords}
      Picture={DropsAgainstDifference}
      {...settings}
    />
  );
}
