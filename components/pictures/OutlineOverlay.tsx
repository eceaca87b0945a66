import { browKeys, type BrowPoints } from '#calculators/browFields.ts';
import { footMm, outlineView } from '#components/calculator/outline/outlineView.ts';
import type { OutlineReport } from '#calculators/outlineSums.ts';
import { stationWords } from '#words/outlineAndCover.ts';
import { BrowOutline, placeOn } from './BrowOutline.tsx';
import { BrowStations } from './BrowStations.tsx';
import { largerTimes, StationLarger } from './StationLarger.tsx';

type Props = Readonly<{ points: BrowPoints; report: OutlineReport; ownShare: number }>;

const sides = ['right', 'left'] as const;

/**
 * Midline, both planned outlines, thickness straight across at every station, the ten marks; below, one
 * station larger.
 */
export function OutlineOverlay({ points, report, ownShare }: Props) {
  return (
    <g>
      <path class="d-thread" d="M0-32V5" />
      <circle class="d-pin" cx="0" cy="-32" r="1.3" />
      <circle class="d-pin full" cx="0" cy="5" r="1.3" />
      {report.ok &&
        sides.map((side) => {
          const shape = report.shapes[side];
          return (
            <g key={side}>
              {shape && <BrowOutline curves={shape.curves} place={placeOn(side)} />}
              <BrowStations stations={report.stations} side={side} ownShare={ownShare} />
            </g>
          );
        })}
      {browKeys.map((key) => {
        const { xMm, yMm } = points[key];
        return key.endsWith('R') ? (
          <rect key={key} class="d-r" x={xMm - 1.05} y={-yMm - 1.05} width="2.1" height="2.1" />
        ) : (
          <circle key={key} class="d-l" cx={xMm} cy={-yMm} r="1.2" />
        );
      })}
      {report.ok && <Larger report={report} ownShare={ownShare} />}
    </g>
  );
}

function Larger({
  report: { shapes, stations },
  ownShare,
}: Readonly<{ report: Extract<OutlineReport, { ok: true }>; ownShare: number }>) {
  const station = stations.find(({ share }) => share === ownShare);
  if (!station) return null;
  const times = largerTimes(
    Math.max(...sides.map((side) => (station[side].ok ? station[side].straightUpMm : 0))),
  );
  return (
    <g>
      <path class="d-mark" d={`M${outlineView.x},${footMm}h${outlineView.width}`} />
      <text class="halo" x={outlineView.x + 2} y={footMm + 5.5}>
        Your station at {stationWords(ownShare)}, {times} times larger
      </text>
      {sides.map((side) => {
        const shape = shapes[side];
        const thickness = station[side];
        return shape && thickness.ok ? (
          <StationLarger
            key={side}
            curves={shape.curves}
            thickness={thickness}
            side={side}
            times={times}
            y={footMm + 8}
          />
        ) : null;
      })}
    </g>
  );
}
