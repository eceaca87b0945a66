import { afterTheFirstPass } from '#skills/mapping/afterTheFirstPass.ts';
import { afterTheFirstPassWords } from '#words/skills/afterTheFirstPass.ts';
import type { ProblemSettings } from '../bound.ts';
import { EdgeGap } from '../pictures/EdgeGap.tsx';
import { Problem } from '../Problem.tsx';

export default function AfterTheFirstPass(settings: ProblemSettings) {
  return <Problem skill={afterTheFirstPass} words={afterTheFirstPassWords} Picture={EdgeGap} {...settings} />;
}
