import { useOrRefuse } from '#skills/mapping/useOrRefuse.ts';
import { useOrRefuseWords } from '#words/skills/useOrRefuse.ts';
import type { ProblemSettings } from '../bound.ts';
import { PictureCard } from '../pictures/PictureCard.tsx';
import { Problem } from '../Problem.tsx';

export default function UseOrRefuse(settings: ProblemSettings) {
  return <Problem skill={useOrRefuse} words={useOrRefuseWords} Picture={PictureCard} {...settings} />;
}
