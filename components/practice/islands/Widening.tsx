import { widening } from '#skills/skin/widening.ts';
import { wideningWords } from '#words/skills/widening.ts';
import type { ProblemSettings } from '../bound.ts';
import { WidePatch } from '../pictures/WidePatch.tsx';
import { Problem } from '../Problem.tsx';

export default function Widening(settings: ProblemSettings) {
  return <Problem skill={widening} words={wideningWords} Picture={WidePatch} {...settings} />;
}
