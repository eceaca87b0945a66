import { fixed } from '#words/number.ts';
import type { AfterTheFirstPassGiven } from '#words/skills/afterTheFirstPass.ts';
import type { PictureProps } from '../bound.ts';
import { MmPaper } from './MmPaper.tsx';

const scale = 9;
const [left, right] = [8, 127] as const;

/** The approved edge in long blue dashes and where the pigment ends, enlarged. Pigment is below an upper edge, above a lower one. */
export function EdgeGap({ given: { mark, approvedMm, pigmentMm }, at, right: answer }: PictureProps<AfterTheFirstPassGiven>) {
  const isUpper = mark === 'frontTop' || mark === 'archTop';
  const y = (approvedMm - pigmentMm) * scale;
  const far = isUpper ? 34 : -34;
  const gap = Math.abs(approvedMm - pigmentMm);
  return (
    <svg class="plot pic-wide" viewBox="0 -36 135 72" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>{`The approved ${isUpper ? 'upper' : 'lower'} edge and the pigment’s edge ${fixed(gap)} mm ${pigmentMm > approvedMm ? 'above' : 'below'} it`}</title>
      <MmPaper at={at} x={0} y={-36} width={135} height={72} scale={scale} />
      <path class="area" d={`M${left} ${y}H${right}V${far}H${left}Z`} />
      <path class="d-mark" d={`M${left} ${y}H${right}`} />
      <path class="d-plan" d={`M${left} 0H${right}`} />
      <text class="s halo" x={right} y={y > 0 ? -2 : 5} text-anchor="end">approved {fixed(approvedMm)}</text>
      <text class="s halo" x={left} y={y > 0 ? y + 5 : y - 2}>pigment {fixed(pigmentMm)}</text>
      {answer !== undefined && <path class="range" d={`M67.5 0V${y}`} />}
      {answer !== undefined && <text class="s b halo" x="70" y={y / 2 + 1.3}>{fixed(gap)} mm</text>}
    </svg>
  );
}
