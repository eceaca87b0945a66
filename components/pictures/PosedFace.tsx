import { headPoseOf } from '#calculators/headPoseOf.ts';
import type { PoseState } from '#calculators/poseFields.ts';
import { mirroredSolid, type SolidPoint } from '#lib/geometry/solid.ts';
import { type HeadPose, straightPose } from '#lib/mapping/pose/headPose.ts';
import { pairOnHead } from '#lib/mapping/pose/modelHead.ts';
import type { FalseDifferences } from '#lib/mapping/pose/readPosed.ts';
import { posedPoint } from '#lib/mapping/pose/posedPoint.ts';
import { signed } from '#words/number.ts';
import { browLine, halfLines, noseTipLine } from './headLines.ts';
import { posedView as view } from './posedView.ts';

type Place = readonly [x: number, y: number];

/** A round line through every place (Catmull and Rom). */
function round(places: readonly Place[]): string {
  const at = (i: number): Place => places[Math.min(places.length - 1, Math.max(0, i))] ?? [0, 0];
  const text = (x: number, y: number) => `${x.toFixed(1)},${y.toFixed(1)}`;
  return places
    .map(([x, y], i) => {
      if (i === 0) return `M${text(x, y)}`;
      const [[ax, ay], [bx, by], [cx, cy]] = [at(i - 2), at(i - 1), at(i + 1)];
      return `C${text(bx + (x - ax) / 6, by + (y - ay) / 6)} ${text(x - (cx - bx) / 6, y - (cy - by) / 6)} ${text(x, y)}`;
    })
    .join('');
}

/**
 * The model head in one pose, as paths; the picture is moved so that the middle of the pupils keeps its
 * place.
 */
function headPaths(pose: HeadPose, flip: 1 | -1) {
  const [right, left] = [
    posedPoint(pairOnHead('pupil', 'right'), pose),
    posedPoint(pairOnHead('pupil', 'left'), pose),
  ];
  const middle = { xMm: (right.xMm + left.xMm) / 2, yMm: (right.yMm + left.yMm) / 2 };
  const place = (point: SolidPoint): Place => {
    const { xMm, yMm } = posedPoint(point, pose);
    return [flip * (xMm - middle.xMm), middle.yMm - yMm];
  };
  const both = (line: readonly SolidPoint[]) =>
    round(line.map(place)) + round(line.map(mirroredSolid).map(place));
  return {
    middle,
    place,
    face: halfLines.map(both).join('') + round(noseTipLine.map(place)),
    brows: both([...browLine, ...browLine.slice(0, 1)]),
  };
}

const straightHead = { 'as-seen': headPaths(straightPose, 1), mirrored: headPaths(straightPose, -1) };
const marks = [
  ['front', 'frontTop', -7.5],
  ['arch', 'archTop', -5.5],
  ['tail', 'tail', -1.5],
] as const;

/**
 * The symmetric face as this picture shows it, over the same face looking straight; what seems different
 * stands at the left brow.
 */
export function PosedFace({
  id,
  state,
  seen,
}: Readonly<{ id: string; state: PoseState; seen: FalseDifferences }>) {
  const flip = state.flip === 'mirrored' ? -1 : 1;
  const { middle, place, face, brows } = headPaths(headPoseOf(state), flip);
  const still = straightHead[state.flip];
  const xAt = (yMm: number) =>
    (seen.midline.offsetMm - seen.midline.normal.y * (yMm + middle.yMm)) / seen.midline.normal.x - middle.xMm;
  const thread = [50, -122].map((yMm): Place => [flip * xAt(yMm), -yMm]);
  return (
    <svg
      class="plot map stage posed"
      viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`}
      role="img"
      aria-labelledby={`${id}-t`}
    >
      <title id={`${id}-t`}>
        The symmetric face as the picture shows it, over the same face looking straight
      </title>
      <path class="d-still" d={still.face + still.brows} />
      <path class="d-posed" d={face} />
      {(['right', 'left'] as const).map((side) => {
        const [x, y] = place(pairOnHead('pupil', side));
        return <circle key={side} class="d-posed" cx={x.toFixed(1)} cy={y.toFixed(1)} r="4.6" />;
      })}
      <path class="d-posed brow" d={brows} />
      <path class="d-thread" d={`M${thread.map(([x, y]) => `${x.toFixed(1)},${y}`).join('L')}`} />
      {thread.map(([x, y], i) => (
        <circle key={y} class={i > 0 ? 'd-pin full' : 'd-pin'} cx={x.toFixed(1)} cy={y} r="1.3" />
      ))}
      {marks.map(([name, mark, up]) => {
        const [rx, ry] = place(pairOnHead(mark, 'right'));
        const [lx, ly] = place(pairOnHead(mark, 'left'));
        return (
          <g key={name}>
            <rect
              class="d-r"
              x={(rx - 1.05).toFixed(1)}
              y={(ry - 1.05).toFixed(1)}
              width="2.1"
              height="2.1"
            />
            <circle class="d-l" cx={lx.toFixed(1)} cy={ly.toFixed(1)} r="1.2" />
            <text
              class="v halo"
              x={(name === 'tail' ? lx + 3 * flip : lx).toFixed(1)}
              y={(ly + up).toFixed(1)}
              text-anchor={name !== 'tail' ? 'middle' : flip > 0 ? 'start' : 'end'}
            >
              {signed(seen.outwardMm[name])}
            </text>
          </g>
        );
      })}
      <text class="ref halo" x={-75 * flip} y="92" text-anchor={flip > 0 ? 'start' : 'end'}>
        client’s right
      </text>
      <text class="ref halo" x={75 * flip} y="92" text-anchor={flip > 0 ? 'end' : 'start'}>
        client’s left
      </text>
    </svg>
  );
}
