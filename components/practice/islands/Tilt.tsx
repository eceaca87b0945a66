import { tilt } from '#skills/mapping/tilt.ts';
import { tiltWords } from '#words/skills/tilt.ts';
import type { ProblemSettings } from '../bound.ts';
import { TiltedLine } from '../pictures/TiltedLine.tsx';
import { Problem } from '../Problem.tsx';

export default function Tilt(settings: ProblemSettings) {
  return <Problem skill={tilt} words={tiltWords} Picture={TiltedLine} {...settings} />;
}
