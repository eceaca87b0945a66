import { tailChecks } from '#skills/mapping/tailChecks.ts';
import { tailChecksWords } from '#words/skills/tailChecks.ts';
import type { ProblemSettings } from '../bound.ts';
import { TailSketch } from '../pictures/TailSketch.tsx';
import { Problem } from '../Problem.tsx';

export default function TailChecks(settings: ProblemSettings) {
  return <Problem skill={tailChecks} words={tailChecksWords} Picture={TailSketch} {...settings} />;
}
