import { changeNothing } from '#skills/mapping/changeNothing.ts';
import { changeNothingWords } from '#words/skills/changeNothing.ts';
import type { ProblemSettings } from '../bound.ts';
import { RangeRows } from '../pictures/RangeRows.tsx';
import { Problem } from '../Problem.tsx';

export default function ChangeNothing(settings: ProblemSettings) {
  return <Problem skill={changeNothing} words={changeNothingWords} Picture={RangeRows} {...settings} />;
}
