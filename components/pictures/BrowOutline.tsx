import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import type { Cubic } from '#lib/mapping/outline/halfEdge.ts';

/** Where a point of a brow is drawn: "across,down". */
export type Place = (point: FacePoint) => string;

/** A brow on an upright face whose midline is x = 0, drawn so many times larger with `from` at (x, y). */
export function placeOn(side: Side, times = 1, from: FacePoint = { uMm: 0, vMm: 0 }, x = 0, y = 0): Place {
  const way = side === 'left' ? times : -times;
  return ({ uMm, vMm }) =>
    `${(x + way * (uMm - from.uMm)).toFixed(2)},${(y - times * (vMm - from.vMm)).toFixed(2)}`;
}

/** One planned outline: its four exact curves and the straight front, a long blue dash. */
export function BrowOutline({ curves, place }: Readonly<{ curves: readonly Cubic[]; place: Place }>) {
  const d = curves
    .map(
      ([start, a, b, end], i) => `${i === 0 ? `M${place(start)}` : ''}C${place(a)} ${place(b)} ${place(end)}`,
    )
    .join('');
  return <path class="d-plan" d={`${d}Z`} />;
}
