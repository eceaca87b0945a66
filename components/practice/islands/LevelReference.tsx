import { levelReference } from '#skills/mapping/levelReference.ts';
import { fixed } from '#words/number.ts';
import type { LevelReferenceGiven } from '#words/skills/levelReference.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

/**
 * The level thread below, the eye-corner line over it, the two fronts. After marking: the line moved up to
 * the lower front.
 */
function SlopedLine({
  given: { corners, fronts, higher },
  at,
  yours,
  right,
}: PictureProps<LevelReferenceGiven>) {
  const lengthMm = corners.left.alongMm;
  const slope = (corners.left.upMm - corners.right.upMm) / lengthMm;
  const lower = fronts[higher === 'left' ? 'right' : 'left'];
  const upper = fronts[higher];
  const startMm = lower.upMm - slope * lower.alongMm;
  const onLineMm = startMm + slope * upper.alongMm;
  const isMarked = typeof right === 'number';
  const isApart = isMarked && typeof yours === 'number' && Math.abs(yours - right) > 0.15;
  const top = isMarked ? -50 : -42;
  const outward = higher === 'left' ? 1 : -1;
  return (
    <svg
      class="plot pic-wide"
      viewBox={`-14 ${top} ${lengthMm + 28} ${8 - top}`}
      role="img"
      aria-labelledby={`${at}-t`}
    >
      <title id={`${at}-t`}>
        {isMarked
          ? `The ${higher} front stands ${fixed(right)} mm over the eye-corner line moved up to the other front`
          : 'A level thread, the sloping eye-corner line and two fronts; the readings are in the table'}
      </title>
      <MmPaper at={at} x={-14} y={top} width={lengthMm + 28} height={8 - top} />
      <path class="dim" d={`M-10 0H${lengthMm + 10}`} />
      <text class="s halo" x={lengthMm / 2} y="5" text-anchor="middle">
        level thread
      </text>
      <path
        class="d-ref"
        d={`M-8 ${-(corners.right.upMm - 8 * slope)}L${lengthMm + 8} ${-(corners.left.upMm + 8 * slope)}`}
      />
      <text
        class="s halo"
        x={lengthMm / 2}
        y={-(corners.right.upMm + (slope * lengthMm) / 2) - 2}
        text-anchor="middle"
      >
        eye-corner line
      </text>
      {(['right', 'left'] as const).map((side) => {
        const corner = corners[side];
        const front = fronts[side];
        return (
          <g>
            <path class="d-mark" d={`M${corner.alongMm} ${-corner.upMm - 2}v4`} />
            {side === 'right' ? (
              <rect class="d-r" x={front.alongMm - 1.3} y={-front.upMm - 1.3} width="2.6" height="2.6" />
            ) : (
              <circle class="d-l" cx={front.alongMm} cy={-front.upMm} r="1.45" />
            )}
            <text
              class="s halo"
              x={front.alongMm + (side === 'right' ? -3 : 3)}
              y={-front.upMm - 3}
              text-anchor={side === 'right' ? 'end' : 'start'}
            >
              {side} front
            </text>
          </g>
        );
      })}
      {isMarked && (
        <>
          <path
            class="d-ref"
            d={`M4 ${-(startMm + 4 * slope)}L${lengthMm - 4} ${-(startMm + (lengthMm - 4) * slope)}`}
          />
          <path class="range" d={`M${upper.alongMm + 3.2 * outward} ${-onLineMm}V${-(onLineMm + right)}`} />
          <text
            class="s b halo"
            x={upper.alongMm + 2 * outward}
            y={top + 6}
            text-anchor={outward > 0 ? 'start' : 'end'}
          >
            {fixed(right)} mm
          </text>
          {isApart && Math.abs(yours) < 12 && (
            <>
              <path
                class="d-plan"
                d={`M${upper.alongMm - 3.2 * outward} ${-onLineMm}V${-(onLineMm + yours)}`}
              />
              <text
                class="s halo"
                x={upper.alongMm - 2 * outward}
                y={top + 6}
                text-anchor={outward > 0 ? 'end' : 'start'}
              >
                yours {fixed(yours)}
              </text>
            </>
          )}
        </>
      )}
    </svg>
  );
}

export default function LevelReference(settings: ProblemSettings) {
  return <Problem skill={levelReference} Picture={SlopedLine} {...settings} />;
}
