import { ownTechnicalError } from '#skills/mapping/ownTechnicalError.ts';
import { ownTechnicalErrorWords } from '#words/skills/ownTechnicalError.ts';
import type { ProblemSettings } from '../bound.ts';
import { PairRows } from '../pictures/PairRows.tsx';
import { Problem } from '../Problem.tsx';

export default function OwnTechnicalError(settings: ProblemSettings) {
  return (
    <Problem skill={ownTechnicalError} words={ownTechnicalErrorWords} Picture={PairRows} {...settings} />
  );
}
