import { levelReference } from '#skills/mapping/levelReference.ts';
import { levelReferenceWords } from '#words/skills/levelReference.ts';
import type { ProblemSettings } from '../bound.ts';
import { SlopedLine } from '../pictures/SlopedLine.tsx';
import { Problem } from '../Problem.tsx';

export default function LevelReference(settings: ProblemSettings) {
  return <Problem skill={levelReference} words={levelReferenceWords} Picture={SlopedLine} {...settings} />;
}
