import { postureMismatch } from '#skills/mapping/postureMismatch.ts';
import { postureMismatchWords } from '#words/skills/postureMismatch.ts';
import type { ProblemSettings } from '../bound.ts';
import { TwoDays } from '../pictures/TwoDays.tsx';
import { Problem } from '../Problem.tsx';

export default function PostureMismatch(settings: ProblemSettings) {
  return <Problem skill={postureMismatch} words={postureMismatchWords} Picture={TwoDays} {...settings} />;
}
