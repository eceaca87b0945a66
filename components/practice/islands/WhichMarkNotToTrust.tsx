import { whichMarkNotToTrust } from '#skills/mapping/whichMarkNotToTrust.ts';
import { whichMarkWords } from '#words/skills/whichMarkNotToTrust.ts';
import type { ProblemSettings } from '../bound.ts';
import { MarkPlot } from '../pictures/MarkPlot.tsx';
import { Problem } from '../Problem.tsx';

export default function WhichMarkNotToTrust(settings: ProblemSettings) {
  return <Problem skill={whichMarkNotToTrust} words={whichMarkWords} Picture={MarkPlot} {...settings} />;
}
