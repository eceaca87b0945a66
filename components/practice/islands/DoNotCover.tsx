import { doNotCover } from '#skills/colour/doNotCover.ts';
import { doNotCoverWords } from '#words/skills/doNotCover.ts';
import type { ProblemSettings } from '../bound.ts';
import { CoverSwatches } from '../pictures/CoverSwatches.tsx';
import { Problem } from '../Problem.tsx';

export default function DoNotCover(settings: ProblemSettings) {
  return <Problem skill={doNotCover} words={doNotCoverWords} Picture={CoverSwatches} {...settings} />;
}
