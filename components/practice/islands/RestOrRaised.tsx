import { restOrRaised } from '#skills/mapping/restOrRaised.ts';
import { restOrRaisedWords } from '#words/skills/restOrRaised.ts';
import type { ProblemSettings } from '../bound.ts';
import { ThreeReadings } from '../pictures/ThreeReadings.tsx';
import { Problem } from '../Problem.tsx';

export default function RestOrRaised(settings: ProblemSettings) {
  return <Problem skill={restOrRaised} words={restOrRaisedWords} Picture={ThreeReadings} {...settings} />;
}
