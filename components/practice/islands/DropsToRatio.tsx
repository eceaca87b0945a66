import { dropsToRatio } from '#skills/colour/dropsToRatio.ts';
import { dropsToRatioWords } from '#words/skills/dropsToRatio.ts';
import type { ProblemSettings } from '../bound.ts';
import { DropRows } from '../pictures/DropRows.tsx';
import { Problem } from '../Problem.tsx';

export default function DropsToRatio(settings: ProblemSettings) {
  return <Problem skill={dropsToRatio} words={dropsToRatioWords} Picture={DropRows} {...settings} />;
}
