import { fixed } from '#words/number.ts';
import { archHeightMm, footMm, tiltedView } from './tiltedView.ts';

type Props = Readonly<{ tiltDeg: number; spanMm: number; fakedMm: number }>;

/** Half the thread that is drawn. */
export const reachMm = 66;
const { x: leftMm, y: topMm, width, height } = tiltedView;
const rightMm = leftMm + width;
const stripMm = (footMm + topMm + height) / 2 + 2.5;
const strip = { half: 17, from: footMm + 8 };

/** How many times heights are enlarged below: the most that still fits. */
const larger = (fakedMm: number) => [10, 5, 2, 1].find((times) => (times * fakedMm) / 2 <= 14) ?? 1;

/**
 * A thread off level over two equal brows; below it what the thread says about two points that are truly
 * level.
 */
export function TiltedThread({ tiltDeg, spanMm, fakedMm }: Props) {
  const turn = (tiltDeg * Math.PI) / 180;
  const end = { x: reachMm * Math.cos(turn), y: reachMm * Math.sin(turn) };
  const half = spanMm / 2;
  const times = larger(fakedMm);
  const off = (times * fakedMm) / 2;
  const lines = Array.from(
    { length: 2 * Math.floor(strip.half / times) + 1 },
    (_, i) => `M${leftMm},${stripMm + (i - Math.floor(strip.half / times)) * times}H${rightMm}`,
  ).join('');
  const right = (y: number) => <rect class="d-r" x={-half - 1.05} y={y - 1.05} width="2.1" height="2.1" />;
  const left = (y: number) => <circle class="d-l" cx={half} cy={y} r="1.2" />;
  return (
    <g class="tilted">
      <path class="d-pair" d={`M${-reachMm},${-archHeightMm}H${reachMm}`} />
      <path
        class="d-ref"
        d={`M${(-end.x).toFixed(2)},${(-archHeightMm + end.y).toFixed(2)}L${end.x.toFixed(2)},${(-archHeightMm - end.y).toFixed(2)}`}
      />
      {right(-archHeightMm)}
      {left(-archHeightMm)}
      <text class="halo" x="0" y={topMm + 9} text-anchor="middle">
        thread {fixed(tiltDeg)}° off level
      </text>
      <path class="d-mark" d={`M${leftMm},${footMm}H${rightMm}`} />
      <path class="paper-mm" d={lines} />
      <text class="halo" x={leftMm + 3} y={strip.from - 1.2}>
        What the thread says{times > 1 && `, heights drawn ${times} times`}
      </text>
      <path class="d-ref" d={`M${leftMm + 4},${stripMm}H${rightMm - 4}`} />
      <path class="d-mark" d={`M${-half},${stripMm}v${-off}M${half},${stripMm}v${off}`} />
      {right(stripMm - off)}
      {left(stripMm + off)}
      <path class="d-pair" d={`M${-half},${stripMm - off}H3M${half},${stripMm + off}H-3`} />
      <path
        class="d-mark"
        d={`M0,${stripMm - off}V${stripMm + off}M-1.6,${stripMm - off}h3.2M-1.6,${stripMm + off}h3.2`}
      />
      <text class="v halo" x="4" y={stripMm - Math.max(off, 2) + 0.5}>
        {fixed(fakedMm)} mm
      </text>
    </g>
  );
}
