import { readBeforeNumbing } from '#skills/colour/readBeforeNumbing.ts';
import { readBeforeNumbingWords } from '#words/skills/readBeforeNumbing.ts';
import type { ProblemSettings } from '../bound.ts';
import { ThreeSwatches } from '../pictures/ThreeSwatches.tsx';
import { Problem } from '../Problem.tsx';

export default function ReadBeforeNumbing(settings: ProblemSettings) {
  return (
    <Problem skill={readBeforeNumbing} words={readBeforeNumbingWords} Picture={ThreeSwatches} {...settings} />
  );
}
