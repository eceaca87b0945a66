import { frontByThreeAnchors } from '#skills/mapping/frontByThreeAnchors.ts';
import { frontByThreeAnchorsWords } from '#words/skills/frontByThreeAnchors.ts';
import type { ProblemSettings } from '../bound.ts';
import { AnchorRuler } from '../pictures/AnchorRuler.tsx';
import { Problem } from '../Problem.tsx';

export default function FrontByThreeAnchors(settings: ProblemSettings) {
  return (
    <Problem
      skill={frontByThreeAnchors}
      words={frontByThreeAnchorsWords}
      Picture={AnchorRuler}
      {...settings}
    />
  );
}
