import type { SheetScale } from '#calculators/sheets/paper.ts';
import type { Brow, Brows } from '#lib/mapping/marks/brow.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { browMarks, type Side } from '#lib/mapping/marks/markSet.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlineCurves } from '#lib/mapping/outline/outlineCurves.ts';
import { outlineSheetWords as words } from '#words/sheets.ts';
import { ScaleBars } from './ScaleBars.tsx';
import { pictureTopMm, sheetWidthMm } from './sheetSize.ts';

/** Half the picture's width, and how far it reaches below and above the level through the pupils, mm. */
const reachMm = 76;
const belowMm = 8;
const aboveMm = 42;
const rowMm = belowMm + aboveMm;
/** Half a mark's cross. */
const crossMm = 1.5;
export const outlineHeightMm = 126;

type Place = (point: FacePoint) => Readonly<{ x: number; y: number }>;
const placeOn = (side: Side, midXMm: number, levelYMm: number, { across, up }: SheetScale): Place => {
  const outward = side === 'left' ? across : -across;
  return ({ uMm, vMm }) => ({ x: midXMm + outward * uMm, y: levelYMm - up * vMm });
};
const mm = (value: number): string => String(Number(value.toFixed(3)));

function outlinePath(brow: Brow, place: Place): string | undefined {
  const outline = outlineOf(brow);
  if (!outline.ok) return undefined;
  const curves = outlineCurves(outline);
  const at = (point: FacePoint) => `${mm(place(point).x)} ${mm(place(point).y)}`;
  return `M${at(curves[0][0])}${curves.map(([, b, c, d]) => `C${at(b)} ${at(c)} ${at(d)}`).join('')}Z`;
}

const crossPath = ({ x, y }: ReturnType<Place>): string =>
  `M${mm(x - crossMm)} ${mm(y)}H${mm(x + crossMm)}M${mm(x)} ${mm(y - crossMm)}V${mm(y + crossMm)}`;

function BrowShape({ brow, place, look }: Readonly<{ brow: Brow; place: Place; look: string }>) {
  const d = outlinePath(brow, place);
  return (
    <g class={look}>
      {d && <path class="sheet-outline" d={d} />}
      {browMarks.map((mark) => (
        <path key={mark} class="sheet-cross" d={crossPath(place(brow[mark]))} />
      ))}
    </g>
  );
}

/**
 * Both brows at true size, and below them the right one turned over onto the left: what differs is what
 * stands apart.
 */
export function OutlineSheetDrawing({ brows, scale }: Readonly<{ brows: Brows; scale: SheetScale }>) {
  const midX = (reachMm + 1) * scale.across;
  const both = pictureTopMm + aboveMm * scale.up;
  const over = both + (rowMm + 2) * scale.up;
  const width = 2 * (reachMm + 1) * scale.across;
  const level = (y: number, from: number) => `M${from} ${y}H${width}`;
  const on = (side: Side, y: number, x = midX) => placeOn(side, x, y, scale);
  // The lower row needs one side only: the midline moves to the left edge.
  const foldX = 14 * scale.across;
  return (
    <svg
      class="true-size"
      viewBox={`0 0 ${sheetWidthMm} ${outlineHeightMm}`}
      role="img"
      aria-label={words.picture}
    >
      <ScaleBars scale={scale} />
      <g>
        <path class="sheet-level" d={level(both, 0)} />
        <path class="sheet-midline" d={`M${midX} ${both - aboveMm * scale.up + 3}V${both + 6 * scale.up}`} />
        <BrowShape brow={brows.right} place={on('right', both)} look="solid" />
        <BrowShape brow={brows.left} place={on('left', both)} look="solid" />
        <text x="1" y={both + 5}>
          {words.right}
        </text>
        <text x={width} y={both + 5} text-anchor="end">
          {words.left}
        </text>
        <text x={midX + 1.5} y={both - aboveMm * scale.up + 6}>
          {words.midline}
        </text>
      </g>
      <g>
        <path class="sheet-level" d={level(over, 0)} />
        <path class="sheet-midline" d={`M${foldX} ${over - aboveMm * scale.up + 6}V${over + 6 * scale.up}`} />
        <BrowShape brow={brows.left} place={on('left', over, foldX)} look="solid" />
        <BrowShape brow={brows.right} place={on('left', over, foldX)} look="dashed" />
        <text x={foldX + 1.5} y={over + 5}>
          {words.over}
        </text>
      </g>
    </svg>
  );
}
