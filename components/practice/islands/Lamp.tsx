import { lamp } from '#skills/colour/lamp.ts';
import { lampWords } from '#words/skills/lamp.ts';
import type { ProblemSettings } from '../bound.ts';
import { TwoLamps } from '../pictures/TwoLamps.tsx';
import { Problem } from '../Problem.tsx';

export default function Lamp(settings: ProblemSettings) {
  return <Problem skill={lamp} words={lampWords} Picture={TwoLamps} {...settings} />;
}
