import { widening } from '#skills/skin/widening.ts';
import type { WideningGiven } from '#words/skills/widening.ts';
import { fixed } from '#words/number.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { CoverBar } from '../pictures/CoverBar.tsx';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { strokePath } from '../pictures/patches.ts';
import { Problem } from '../Problem.tsx';

const [widthMm, heightMm, scale, strokeMm] = [7.5, 4.8, 8, 6];

/**
 * The same patch twice, enlarged: on the day, and with the same strokes wider. After marking: the share as a
 * bar.
 */
function WidePatch({
  given: { freshPercent, freshMm, healedMm, isCrossing },
  at,
  yours,
  right,
}: PictureProps<WideningGiven>) {
  const share = freshPercent / 100;
  const strokes = isCrossing
    ? (-Math.log1p(-share) * widthMm * heightMm) / (strokeMm * freshMm)
    : (share * widthMm) / freshMm;
  const path = strokePath(Math.round(strokes), strokeMm, widthMm, heightMm, isCrossing);
  const patch = (x: number, mm: number, name: string) => (
    <>
      <text class="s halo" x={x} y="6">
        {name}, {fixed(mm, 2)} mm
      </text>
      <g transform={`translate(${x} 8) scale(${scale})`}>
        <g clip-path={`url(#${at}-c)`}>
          <path class="cover-marks" stroke-width={mm} d={path} />
        </g>
      </g>
    </>
  );
  return (
    <svg class="plot pic-wide" viewBox="0 0 135 76" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {typeof right === 'number'
          ? `${fixed(right)} % of the skin is covered once the strokes have widened`
          : `The same patch twice: strokes ${fixed(freshMm, 2)} mm wide, then ${fixed(healedMm, 2)} mm`}
      </title>
      <MmPaper at={at} x={0} y={0} width={135} height={76} scale={scale} zeroX={4} />
      <clipPath id={`${at}-c`}>
        <rect width={widthMm} height={heightMm} />
      </clipPath>
      {patch(4, freshMm, 'fresh')}
      {patch(71, healedMm, 'wider')}
      <CoverBar y={56} yours={yours} right={right} />
    </svg>
  );
}

export default function Widening(settings: ProblemSettings) {
  return <Problem skill={widening} Picture={WidePatch} {...settings} />;
}
