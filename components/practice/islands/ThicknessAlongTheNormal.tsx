import { thicknessAlongTheNormal } from '#skills/mapping/thicknessAlongTheNormal.ts';
import { thicknessAlongTheNormalWords } from '#words/skills/thicknessAlongTheNormal.ts';
import type { ProblemSettings } from '../bound.ts';
import { BrowLines } from '../pictures/BrowLines.tsx';
import { Problem } from '../Problem.tsx';

export default function ThicknessAlongTheNormal(settings: ProblemSettings) {
  return (
    <Problem
      skill={thicknessAlongTheNormal}
      words={thicknessAlongTheNormalWords}
      Picture={BrowLines}
      {...settings}
    />
  );
}
