import { afterTheFirstPass } from '#skills/mapping/afterTheFirstPass.ts';
import { fixed } from '#words/number.ts';
import type { AfterTheFirstPassGiven } from '#words/skills/afterTheFirstPass.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const scale = 4.5;
const [left, right] = [8, 127] as const;

/**
 * Both edges of the brow at one place: the approved ones in long blue dashes, the pigment between where its
 * edges are read now. The edge that is asked about is named strong.
 */
function EdgeGap({
  given: { mark, approvedMm, pigmentMm, across },
  at,
  right: answer,
}: PictureProps<AfterTheFirstPassGiven>) {
  const isUpper = mark === 'frontTop' || mark === 'archTop';
  const asked = { approvedMm, pigmentMm };
  const [upper, lower] = isUpper ? [asked, across] : [across, asked];
  const middleMm = (upper.approvedMm + lower.approvedMm) / 2;
  const y = (mm: number) => (middleMm - mm) * scale;
  const gap = (edge: typeof asked) => Math.abs(edge.approvedMm - edge.pigmentMm);
  const side = (edge: typeof asked) =>
    `${fixed(gap(edge))} mm ${edge.pigmentMm > edge.approvedMm ? 'above' : 'below'} its line`;
  return (
    <svg class="plot pic-wide" viewBox="0 -38 135 76" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`The approved edges and the pigment between its own: the upper edge of the pigment ${side(upper)}, the lower edge ${side(lower)}. Asked: the ${isUpper ? 'upper' : 'lower'} one`}</title>
      <MmPaper at={at} x={0} y={-38} width={135} height={76} scale={scale} />
      <path class="area" d={`M${left} ${y(upper.pigmentMm)}H${right}V${y(lower.pigmentMm)}H${left}Z`} />
      {[upper, lower].map((edge) => (
        <path class="d-mark" d={`M${left} ${y(edge.pigmentMm)}H${right}`} />
      ))}
      {[upper, lower].map((edge) => (
        <path class="d-plan" d={`M${left} ${y(edge.approvedMm)}H${right}`} />
      ))}
      {[upper, lower].map((edge) => {
        const name = edge === asked ? 's b halo' : 's halo';
        const isTop = edge === upper;
        const outer = isTop
          ? Math.min(y(edge.approvedMm), y(edge.pigmentMm)) - 2
          : Math.max(y(edge.approvedMm), y(edge.pigmentMm)) + 5;
        return (
          <>
            <text class={name} x={right} y={outer} text-anchor="end">
              approved {fixed(edge.approvedMm)}
            </text>
            <text class={name} x={left} y={outer}>
              pigment {fixed(edge.pigmentMm)}
            </text>
          </>
        );
      })}
      {answer !== undefined && <path class="range" d={`M67.5 ${y(approvedMm)}V${y(pigmentMm)}`} />}
      {answer !== undefined && (
        <text class="s b halo" x="70" y={(y(approvedMm) + y(pigmentMm)) / 2 + 1.3}>
          {fixed(gap(asked))} mm
        </text>
      )}
    </svg>
  );
}

export default function AfterTheFirstPass(settings: ProblemSettings) {
  return <Problem skill={afterTheFirstPass} Picture={EdgeGap} {...settings} />;
}
