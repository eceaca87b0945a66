import { coverageFromDots } from '#skills/skin/coverageFromDots.ts';
import type { CoverageFromDotsGiven } from '#words/skills/coverageFromDots.ts';
import { fixed } from '#words/number.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { CoverBar } from '../pictures/CoverBar.tsx';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { dotPath } from '../pictures/patches.ts';
import { Problem } from '../Problem.tsx';

const [widthMm, heightMm, scale] = [8, 2.5, 15.6];

/** A patch of skin, enlarged, with its dots. After marking: the share as a bar. */
function DotPatch({
  given: { dotsPerMm2, acrossMm },
  at,
  yours,
  right,
}: PictureProps<CoverageFromDotsGiven>) {
  return (
    <svg class="plot pic-wide" viewBox="0 0 135 72" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {typeof right === 'number'
          ? `${fixed(right)} % of the skin is covered`
          : 'A patch of skin on millimetre paper with its dots; the numbers are in the text'}
      </title>
      <MmPaper at={at} x={0} y={0} width={135} height={72} scale={scale} zeroX={5} />
      <clipPath id={`${at}-c`}>
        <rect width={widthMm} height={heightMm} />
      </clipPath>
      <g transform={`translate(5 4) scale(${scale})`}>
        <g clip-path={`url(#${at}-c)`}>
          <path
            class="cover-marks round"
            stroke-width={acrossMm}
            d={dotPath(Math.round(dotsPerMm2 * widthMm * heightMm), widthMm, heightMm)}
          />
        </g>
      </g>
      <CoverBar y={52} yours={yours} right={right} />
    </svg>
  );
}

export default function CoverageFromDots(settings: ProblemSettings) {
  return <Problem skill={coverageFromDots} Picture={DotPatch} {...settings} />;
}
