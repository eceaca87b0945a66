import type { StationPair } from '#lib/mapping/outline/stationPairs.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { Thickness } from '#lib/mapping/outline/thickness.ts';
import { fixed } from '#words/number.ts';
import { type Place, placeOn } from './BrowOutline.tsx';

/** The line straight across a brow, light underneath so that it shows on hair. */
export function Across({
  upper,
  lower,
  place,
}: Pick<Thickness, 'upper' | 'lower'> & Readonly<{ place: Place }>) {
  const d = `M${place(lower)}L${place(upper)}`;
  return (
    <g class="across">
      <path class="under" d={d} />
      <path class="d-mark" d={d} />
    </g>
  );
}

/**
 * Thickness at every station of one brow: a line straight across it and its number; the learner's own stands
 * below the brow.
 */
export function BrowStations({
  stations,
  side,
  ownShare,
}: Readonly<{ stations: readonly StationPair[]; side: Side; ownShare: number }>) {
  const place = placeOn(side);
  return (
    <g>
      {stations.map(({ share, [side]: thickness }) => {
        if (!thickness.ok) return null;
        const { upper, lower, normal, thicknessMm } = thickness;
        const isOwn = share === ownShare;
        const end = isOwn ? lower : upper;
        const off = isOwn ? -5.6 : 2;
        const [x, y] = place({ uMm: end.uMm + off * normal.u, vMm: end.vMm + off * normal.v }).split(',');
        return (
          <g key={share}>
            <Across upper={upper} lower={lower} place={place} />
            <text class="v halo" x={x} y={y} text-anchor="middle">
              {fixed(thicknessMm)}
            </text>
          </g>
        );
      })}
    </g>
  );
}
