import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlinePolygon } from '#lib/mapping/outline/outlineCurves.ts';
import { thicknessAlongTheNormal } from '#skills/mapping/thicknessAlongTheNormal.ts';
import { fixed } from '#words/number.ts';
import { lineNames, type ThicknessGiven } from '#words/skills/thicknessAlongTheNormal.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const width = 120;
const height = 66;
const times = 4;

/**
 * The station of one brow, four times larger, with three lines through one point of its centreline. After
 * marking: the square one with its length.
 */
function BrowLines({ given, at, yours, right }: PictureProps<ThicknessGiven>) {
  const { side, brow, lines, square, stationPercent } = given;
  const outline = outlineOf(brow);
  const { lower: foot, upper: top } = lines[given.upright];
  const isMarked = typeof right === 'number';
  const isApart = isMarked && typeof yours === 'number' && Math.abs(yours - right) > 0.15;
  const way = side === 'left' ? 1 : -1;
  const place = ({ uMm, vMm }: FacePoint) =>
    `${(width / 2 + way * times * (uMm - foot.uMm)).toFixed(2)},${(height / 2 - times * (vMm - (foot.vMm + top.vMm) / 2)).toFixed(2)}`;
  return (
    <svg class="plot pic-wide" viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {isMarked
          ? `Line ${square} stands square to the brow at ${stationPercent} % and is ${fixed(right)} mm long`
          : `The ${side} brow and three lines across it at ${stationPercent} %; where they meet the edges is in the table`}
      </title>
      <MmPaper at={at} x={0} y={0} width={width} height={height} scale={times} />
      {outline.ok && <path class="d-plan" d={`M${outlinePolygon(outline, 24).map(place).join('L')}Z`} />}
      {lineNames.map((name) => {
        const { lower, upper } = lines[name];
        const longer = 1 / Math.hypot(upper.uMm - lower.uMm, upper.vMm - lower.vMm);
        const [x, y] = place({
          uMm: upper.uMm + longer * (upper.uMm - lower.uMm),
          vMm: upper.vMm + longer * (upper.vMm - lower.vMm),
        }).split(',');
        return (
          <g key={name}>
            <path
              class={isMarked && name !== square ? 'd-pair' : 'd-mark'}
              d={`M${place(lower)}L${place(upper)}`}
            />
            <text class="s b halo" x={x} y={Number(y) + 1.2} text-anchor="middle">
              {name}
            </text>
          </g>
        );
      })}
      <text class="s halo" x={width / 2} y="5" text-anchor="middle">
        {stationPercent} % of the length, 4 times larger
      </text>
      {isMarked && (
        <text
          class="s b halo"
          x={way > 0 ? 2 : width - 2}
          y={height - 2}
          text-anchor={way > 0 ? 'start' : 'end'}
        >
          {square}: {fixed(right)} mm
        </text>
      )}
      {isApart && (
        <text
          class="s halo"
          x={way > 0 ? width - 2 : 2}
          y={height - 2}
          text-anchor={way > 0 ? 'end' : 'start'}
        >
          yours {fixed(yours)}
        </text>
      )}
    </svg>
  );
}

export default function ThicknessAlongTheNormal(settings: ProblemSettings) {
  return <Problem skill={thicknessAlongTheNormal} Picture={BrowLines} {...settings} />;
}
