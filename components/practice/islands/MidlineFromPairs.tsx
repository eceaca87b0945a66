import { midlineFromPairs } from '#skills/mapping/midlineFromPairs.ts';
import { midlineFromPairsWords } from '#words/skills/midlineFromPairs.ts';
import type { ProblemSettings } from '../bound.ts';
import { MidlineRuler } from '../pictures/MidlineRuler.tsx';
import { Problem } from '../Problem.tsx';

export default function MidlineFromPairs(settings: ProblemSettings) {
  return (
    <Problem skill={midlineFromPairs} words={midlineFromPairsWords} Picture={MidlineRuler} {...settings} />
  );
}
