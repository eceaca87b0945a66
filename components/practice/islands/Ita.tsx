import { ita } from '#skills/colour/ita.ts';
import { itaWords } from '#words/skills/ita.ts';
import type { ProblemSettings } from '../bound.ts';
import { SkinPatch } from '../pictures/SkinPatch.tsx';
import { Problem } from '../Problem.tsx';

export default function Ita(settings: ProblemSettings) {
  return <Problem skill={ita} words={itaWords} Picture={SkinPatch} {...settings} />;
}
