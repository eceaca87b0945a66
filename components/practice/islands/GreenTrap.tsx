import { greenTrap } from '#skills/colour/greenTrap.ts';
import { greenTrapWords } from '#words/skills/greenTrap.ts';
import type { ProblemSettings } from '../bound.ts';
import { GreenPlane } from '../pictures/GreenPlane.tsx';
import { Problem } from '../Problem.tsx';

export default function GreenTrap(settings: ProblemSettings) {
  return <Problem skill={greenTrap} words={greenTrapWords} Picture={GreenPlane} {...settings} />;
}
