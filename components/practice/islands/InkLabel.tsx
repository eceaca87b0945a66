import { inkLabel } from '#skills/colour/inkLabel.ts';
import { inkLabelWords } from '#words/skills/inkLabel.ts';
import type { ProblemSettings } from '../bound.ts';
import { BottleLabel } from '../pictures/BottleLabel.tsx';
import { Problem } from '../Problem.tsx';

export default function InkLabel(settings: ProblemSettings) {
  return <Problem skill={inkLabel} words={inkLabelWords} Picture={BottleLabel} {...settings} />;
}
