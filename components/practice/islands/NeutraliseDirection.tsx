import { neutraliseDirection } from '#skills/colour/neutraliseDirection.ts';
import type { ProblemSettings } from '../bound.ts';
import { HuePlane } from '../pictures/HuePlane.tsx';
import { Problem } from '../Problem.tsx';

export default function NeutraliseDirection(settings: ProblemSettings) {
  return <Problem skill={neutraliseDirection} Picture={HuePlane} {...settings} />;
}
