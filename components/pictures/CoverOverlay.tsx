import { coverMarks, type CoverState, type Shape } from '#calculators/coverFields.ts';
import { coverView, footMm } from '#components/calculator/cover/coverView.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import { capital } from '#words/marks.ts';
import type { CoverPaths, SidePaths } from './coverPaths.ts';

type Props = Readonly<{
  id: string;
  state: CoverState;
  paths: CoverPaths;
  shape: Shape;
  /** The side that is drawn larger. */
  side: Side;
}>;

/**
 * Midline; on each side the old shape, what of it stays outside, the outline with its corrections, the marks
 * that move; below, one side larger.
 */
export function CoverOverlay({ id, state, paths, shape, side }: Props) {
  const covered = ({ old, out, planned, moves }: SidePaths) => (
    <>
      <path class="cover-old" fill={`url(#${id}-hatch)`} d={old} />
      <path class="cover-out" d={out} />
      <path class="d-plan" d={planned} />
      <path class="cover-move" d={moves} />
    </>
  );
  return (
    <g>
      <defs>
        <pattern
          id={`${id}-hatch`}
          width="1.1"
          height="1.1"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path class="cover-hatch" d="M0 0V1.1" />
        </pattern>
      </defs>
      <path class="d-thread" d="M0-31V4" />
      <circle class="d-pin" cx="0" cy="-31" r="1.3" />
      <circle class="d-pin full" cx="0" cy="4" r="1.3" />
      {covered(paths.right.there)}
      {covered(paths.left.there)}
      {coverMarks
        .filter((mark) => mark.shape === shape)
        .map((mark) => {
          const { xMm, yMm } = state[mark.key];
          return mark.side === 'right' ? (
            <rect key={mark.key} class="d-r" x={xMm - 1.05} y={-yMm - 1.05} width="2.1" height="2.1" />
          ) : (
            <circle key={mark.key} class="d-l" cx={xMm} cy={-yMm} r="1.2" />
          );
        })}
      <path class="d-mark" d={`M${coverView.x},${footMm}h${coverView.width}`} />
      <text class="halo" x={coverView.x + 2} y={footMm + 5.5}>
        {capital(side)} brow, 2.6 times larger
      </text>
      <g transform={`translate(0 ${footMm + 28})`}>{covered(paths[side].larger)}</g>
    </g>
  );
}
