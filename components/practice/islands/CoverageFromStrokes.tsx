import { coverageFromStrokes } from '#skills/skin/coverageFromStrokes.ts';
import { coverageFromStrokesWords } from '#words/skills/coverageFromStrokes.ts';
import type { ProblemSettings } from '../bound.ts';
import { StrokePatch } from '../pictures/StrokePatch.tsx';
import { Problem } from '../Problem.tsx';

export default function CoverageFromStrokes(settings: ProblemSettings) {
  return (
    <Problem
      skill={coverageFromStrokes}
      words={coverageFromStrokesWords}
      Picture={StrokePatch}
      {...settings}
    />
  );
}
