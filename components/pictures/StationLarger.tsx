import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { Cubic } from '#lib/mapping/outline/halfEdge.ts';
import type { Thickness } from '#lib/mapping/outline/thickness.ts';
import { fixed } from '#words/number.ts';
import { BrowOutline, placeOn } from './BrowOutline.tsx';
import { Across } from './BrowStations.tsx';

const width = 60;
const height = 26;

/** How many times larger a station is drawn: the most that still fits. */
export const largerTimes = (straightUpMm: number) =>
  [5, 4, 3].find((times) => times * straightUpMm <= 15) ?? 2;

type Props = Readonly<{
  curves: readonly Cubic[];
  thickness: Thickness;
  side: Side;
  times: number;
  y: number;
}>;

/** One station of one brow drawn larger: straight across, and straight up from the same place. */
export function StationLarger({ curves, thickness, side, times, y }: Props) {
  const { centre, straightUpMm, thicknessMm } = thickness;
  const place = placeOn(side, times, centre, width / 2, height / 2);
  const up = (byMm: number) => place({ uMm: centre.uMm, vMm: centre.vMm + byMm });
  return (
    <svg class="larger" x={side === 'left' ? 4 : -4 - width} y={y} width={width} height={height}>
      <BrowOutline curves={curves} place={place} />
      <Across {...thickness} place={place} />
      <path class="d-ref" d={`M${up(-straightUpMm / 2)}L${up(straightUpMm / 2)}`} />
      <text
        class="v halo"
        x={side === 'left' ? width : 0}
        y={height - 1.5}
        text-anchor={side === 'left' ? 'end' : 'start'}
      >
        across {fixed(thicknessMm)}
      </text>
      <text
        class="halo"
        x={side === 'left' ? 0 : width}
        y={height - 1.5}
        text-anchor={side === 'left' ? 'start' : 'end'}
      >
        up {fixed(straightUpMm)}
      </text>
    </svg>
  );
}
