import { realOrNot } from '#skills/mapping/realOrNot.ts';
import { realOrNotWords } from '#words/skills/realOrNot.ts';
import type { ProblemSettings } from '../bound.ts';
import { DifferenceBar } from '../pictures/DifferenceBar.tsx';
import { Problem } from '../Problem.tsx';

export default function RealOrNot(settings: ProblemSettings) {
  return <Problem skill={realOrNot} words={realOrNotWords} Picture={DifferenceBar} {...settings} />;
}
