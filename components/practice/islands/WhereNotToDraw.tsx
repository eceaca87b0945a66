import { whereNotToDraw } from '#skills/mapping/whereNotToDraw.ts';
import { whereNotToDrawWords } from '#words/skills/whereNotToDraw.ts';
import type { ProblemSettings } from '../bound.ts';
import { OutlineRows } from '../pictures/OutlineRows.tsx';
import { Problem } from '../Problem.tsx';

export default function WhereNotToDraw(settings: ProblemSettings) {
  return <Problem skill={whereNotToDraw} words={whereNotToDrawWords} Picture={OutlineRows} {...settings} />;
}
