import { coverageFromDots } from '#skills/skin/coverageFromDots.ts';
import { coverageFromDotsWords } from '#words/skills/coverageFromDots.ts';
import type { ProblemSettings } from '../bound.ts';
import { DotPatch } from '../pictures/DotPatch.tsx';
import { Problem } from '../Problem.tsx';

export default function CoverageFromDots(settings: ProblemSettings) {
  return <Problem skill={coverageFromDots} words={coverageFromDotsWords} Picture={DotPatch} {...settings} />;
}
