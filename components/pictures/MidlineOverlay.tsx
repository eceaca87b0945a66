import type { PointMm } from '#lib/geometry/point.ts';
import { footOnLine } from '#lib/geometry/line.ts';
import type { ShownReading, NoFaceReading } from '#lib/mapping/compare/readFace.ts';
import { type FacePair, facePairs, faceSingles } from '#lib/mapping/marks/markSet.ts';
import { toPicture } from '#lib/mapping/marks/faceFrame.ts';
import type { MarkPoints } from '#calculators/marks.ts';
import { namedMarks } from '#calculators/marks.ts';
import { signed } from '#words/number.ts';

type Props = Readonly<{ points: MarkPoints; reading: ShownReading | NoFaceReading }>;

const path = (a: PointMm, b: PointMm) =>
  `M${a.xMm.toFixed(2)},${(-a.yMm).toFixed(2)}L${b.xMm.toFixed(2)},${(-b.yMm).toFixed(2)}`;
const middle = (a: PointMm, b: PointMm): PointMm => ({ xMm: (a.xMm + b.xMm) / 2, yMm: (a.yMm + b.yMm) / 2 });

/**
 * One mark: a square on the client's right, a circle on the left, a diamond in the middle; dashed when not
 * trusted.
 */
function Mark({
  side,
  at: { xMm, yMm },
  isOut,
}: Readonly<{ side: 'right' | 'left' | 'middle'; at: PointMm; isOut: boolean }>) {
  const out = isOut ? ' d-out' : '';
  if (side === 'right')
    return <rect class={`d-r${out}`} x={xMm - 1.05} y={-yMm - 1.05} width="2.1" height="2.1" />;
  if (side === 'left') return <circle class={`d-l${out}`} cx={xMm} cy={-yMm} r="1.2" />;
  return <path class={`d-m${out}`} d={`M${xMm},${-yMm - 1.5}l1.5,1.5l-1.5,1.5l-1.5,-1.5z`} />;
}

/** The middle of a pair and its distance from the thread: why a mark is trusted or not. */
function PairMiddle({
  points,
  pair,
  line,
  isOut,
}: Readonly<{ points: MarkPoints; pair: FacePair; line: ShownReading['frame']['midline']; isOut: boolean }>) {
  const right = points[`${pair}R`];
  const left = points[`${pair}L`];
  const centre = middle(right, left);
  return (
    <g>
      <path class={isOut ? 'd-pair d-out' : 'd-pair'} d={path(right, left)} />
      {isOut && <path class="d-off" d={path(centre, footOnLine(centre, line))} />}
      <path
        class={isOut ? 'd-mid d-out' : 'd-mid'}
        d={`M${centre.xMm.toFixed(2)},${(-centre.yMm - 1.4).toFixed(2)}v2.8`}
      />
    </g>
  );
}

/**
 * Thread, level, pair middles, marks and the largest real difference, over a face; picture millimetres, y
 * down.
 */
export function MidlineOverlay({ points, reading }: Props) {
  const notTrusted: ReadonlySet<string> = new Set(reading.ok ? reading.notTrusted : []);
  return (
    <g>
      {reading.ok && <Lines points={points} reading={reading} notTrusted={notTrusted} />}
      {namedMarks.map((named) => (
        <Mark
          key={named.key}
          side={named.group === 'single' ? 'middle' : named.side}
          at={points[named.key]}
          isOut={named.group !== 'brow' && notTrusted.has(named.mark)}
        />
      ))}
    </g>
  );
}

function Lines({
  points,
  reading,
  notTrusted,
}: Readonly<{ points: MarkPoints; reading: ShownReading; notTrusted: ReadonlySet<string> }>) {
  const { frame, brows } = reading;
  const at = (uMm: number, vMm: number) => toPicture({ uMm, vMm }, 'left', frame);
  const top = at(0, 42);
  const foot = at(0, -117);
  const { archTop } = brows;
  const rightLevel = archTop.right.vMm;
  const label = at(
    Math.max(archTop.left.uMm, brows.tail.left.uMm) + 2.5,
    (rightLevel + archTop.left.vMm) / 2,
  );
  return (
    <g>
      <path class="d-ref" d={path(at(-66, 0), at(66, 0))} />
      <text class="ref halo" x={at(66, 0).xMm} y={-at(66, 2.2).yMm} text-anchor="end">
        level
      </text>
      {facePairs.map((pair) => (
        <PairMiddle
          key={pair}
          points={points}
          pair={pair}
          line={frame.midline}
          isOut={notTrusted.has(pair)}
        />
      ))}
      {faceSingles
        .filter((name) => notTrusted.has(name))
        .map((name) => (
          <path key={name} class="d-off" d={path(points[name], footOnLine(points[name], frame.midline))} />
        ))}
      <path class="d-thread" d={path(top, foot)} />
      <circle class="d-pin" cx={top.xMm} cy={-top.yMm} r="1.3" />
      <circle class="d-pin full" cx={foot.xMm} cy={-foot.yMm} r="1.3" />
      <text class="thread-label halo" x={top.xMm + 2.6} y={-top.yMm + 1.2}>
        midline
      </text>
      {archTop.up.band !== 'not-shown' && (
        <g>
          <path
            class="d-ref"
            d={path(at(-archTop.right.uMm - 3, rightLevel), at(brows.tail.left.uMm + 1, rightLevel))}
          />
          <text class="v halo" x={label.xMm} y={-label.yMm + 1.2}>
            {signed(archTop.up.value)}
          </text>
        </g>
      )}
      {notTrusted.has('noseWing') && (
        <text class="out-label halo" x={points.noseWingL.xMm + 6} y={-points.noseWingL.yMm + 1.2}>
          not trusted
        </text>
      )}
    </g>
  );
}
