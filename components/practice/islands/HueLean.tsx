import { hueLean } from '#skills/colour/hueLean.ts';
import { hueLeanWords } from '#words/skills/hueLean.ts';
import type { ProblemSettings } from '../bound.ts';
import { TwoSkins } from '../pictures/TwoSkins.tsx';
import { Problem } from '../Problem.tsx';

export default function HueLean(settings: ProblemSettings) {
  return <Problem skill={hueLean} words={hueLeanWords} Picture={TwoSkins} {...settings} />;
}
