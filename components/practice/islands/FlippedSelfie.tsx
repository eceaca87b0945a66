import { flippedSelfie } from '#skills/mapping/flippedSelfie.ts';
import { flippedSelfieWords } from '#words/skills/flippedSelfie.ts';
import type { ProblemSettings } from '../bound.ts';
import { SelfieFrame } from '../pictures/SelfieFrame.tsx';
import { Problem } from '../Problem.tsx';

export default function FlippedSelfie(settings: ProblemSettings) {
  return <Problem skill={flippedSelfie} words={flippedSelfieWords} Picture={SelfieFrame} {...settings} />;
}
