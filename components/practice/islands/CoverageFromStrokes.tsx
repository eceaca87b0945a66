import { coverageFromStrokes } from '#skills/skin/coverageFromStrokes.ts';
import type { CoverageFromStrokesGiven } from '#words/skills/coverageFromStrokes.ts';
import { fixed } from '#words/number.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { CoverBar } from '../pictures/CoverBar.tsx';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { strokePath } from '../pictures/patches.ts';
import { Problem } from '../Problem.tsx';

const [widthMm, heightMm, scale] = [16, 5, 7.8];

/**
 * A patch out of the brow, enlarged, with as many strokes as its share of the area. After marking: the share
 * as a bar.
 */
function StrokePatch({
  given: { count, lengthMm, widthMm: strokeMm, areaMm2, crossing },
  at,
  yours,
  right,
}: PictureProps<CoverageFromStrokesGiven>) {
  const strokes = crossing ? (count * widthMm * heightMm) / areaMm2 : (count * lengthMm * widthMm) / areaMm2;
  return (
    <svg class="plot pic-wide" viewBox="0 0 135 72" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {typeof right === 'number'
          ? `${fixed(right)} % of the skin is covered`
          : `A patch of the brow on millimetre paper with strokes ${crossing ? 'that cross' : 'side by side'}; the numbers are in the text`}
      </title>
      <MmPaper at={at} x={0} y={0} width={135} height={72} scale={scale} zeroX={5} />
      <clipPath id={`${at}-c`}>
        <rect width={widthMm} height={heightMm} />
      </clipPath>
      <g transform={`translate(5 4) scale(${scale})`}>
        <g clip-path={`url(#${at}-c)`}>
          <path
            class="cover-marks"
            stroke-width={strokeMm}
            d={strokePath(Math.round(strokes), lengthMm, widthMm, heightMm, crossing)}
          />
        </g>
      </g>
      <CoverBar y={52} yours={yours} right={right} />
    </svg>
  );
}

export default function CoverageFromStrokes(settings: ProblemSettings) {
  return <Problem skill={coverageFromStrokes} Picture={StrokePatch} {...settings} />;
}
