import { archByRule } from '#skills/mapping/archByRule.ts';
import { archByRuleWords } from '#words/skills/archByRule.ts';
import type { ProblemSettings } from '../bound.ts';
import { ArchRuler } from '../pictures/ArchRuler.tsx';
import { Problem } from '../Problem.tsx';

export default function ArchByRule(settings: ProblemSettings) {
  return <Problem skill={archByRule} words={archByRuleWords} Picture={ArchRuler} {...settings} />;
}
