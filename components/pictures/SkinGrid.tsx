import { itaEdgesDeg, lightnessAtIta } from '#lib/colour/spaces/ita.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { fixed } from '#words/number.ts';
import { cardLabel } from '#words/skinReading.ts';
import {
  across,
  cell,
  down,
  gridChroma,
  gridHuesDeg,
  gridLightness,
  swatchAt,
  swatchLab,
} from './skinGrid.ts';

type Ends = Readonly<{ lo: number; hi: number }>;
type Props = Readonly<{
  readings: readonly Lab[];
  /** The interval of lightness and of hue, where there is one. */
  doubt?: Readonly<{ l: Ends; hue: Ends; mean: Lab }> | undefined;
  onPick: (l: number, hDeg: number) => void;
}>;

const fill = (lab: Lab) => srgbToHex(labToSrgb(lab));
const [width, height] = [400, 352];
const right = cell.left + gridHuesDeg.length * cell.width;
const foot = cell.top + gridLightness.length * cell.height;
const edgeHues = [37.5, ...gridHuesDeg, 82.5];

/** A class edge over the swatches: the lightness at which the angle is reached, hue by hue. */
function edgePath(deg: number): string {
  return edgeHues
    .map(
      (hDeg, i) =>
        `${i === 0 ? 'M' : 'L'}${across(hDeg)} ${down(lightnessAtIta(deg, swatchLab(50, hDeg, gridChroma).b)).toFixed(1)}`,
    )
    .join('');
}

/**
 * Swatches by lightness and hue on the grey card, the readings as rings, their doubt as a frame. Tap a swatch
 * to read it.
 */
export function SkinGrid({ readings, doubt, onPick }: Props) {
  const pick = (event: MouseEvent & { currentTarget: SVGSVGElement }) => {
    const box = event.currentTarget.getBoundingClientRect();
    const found = swatchAt(
      ((event.clientX - box.left) / box.width) * width,
      ((event.clientY - box.top) / box.height) * height,
    );
    if (found) onPick(found.l, found.hDeg);
  };
  const frame =
    doubt &&
    `M${across(doubt.hue.lo)} ${down(doubt.l.hi)}H${across(doubt.hue.hi)}V${down(doubt.l.lo)}H${across(doubt.hue.lo)}Z`;
  return (
    <svg
      class="drop-card skin-grid"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`Swatches on a grey card, lightness by hue. ${readings.map((lab, i) => `Reading ${i + 1}: ${cardLabel(lab)}.`).join(' ')}`}
      onClick={pick}
    >
      <rect class="card" width={width} height={height} />
      <text class="card-text" x="6" y="15">
        L*
      </text>
      <text class="card-text" x={right + 6} y="15">
        ITA
      </text>
      {gridLightness.map((l) => (
        <text key={l} class="card-num" x={cell.left - 6} y={down(l) + 4} text-anchor="end">
          {l}
        </text>
      ))}
      {gridLightness.map((l) =>
        gridHuesDeg.map((hDeg) => (
          <rect
            key={`${l} ${hDeg}`}
            x={across(hDeg - 2.5)}
            y={down(l + 2.5)}
            width={cell.width}
            height={cell.height}
            fill={fill(swatchLab(l, hDeg))}
          />
        )),
      )}
      {itaEdgesDeg.map((deg) => (
        <g key={deg}>
          <path class="grid-edge under" d={edgePath(deg)} />
          <path class="grid-edge" d={edgePath(deg)} />
          <text class="card-num" x={right + 6} y={down(lightnessAtIta(deg, swatchLab(50, 82.5).b)) + 4}>
            {fixed(deg, 0)}°
          </text>
        </g>
      ))}
      {gridHuesDeg.map((hDeg) => (
        <text key={hDeg} class="card-num" x={across(hDeg)} y={foot + 15} text-anchor="middle">
          {hDeg}°
        </text>
      ))}
      <text class="card-text" x={cell.left} y={foot + 32}>
        redder
      </text>
      <text class="card-text" x={(cell.left + right) / 2} y={foot + 32} text-anchor="middle">
        hue angle
      </text>
      <text class="card-text" x={right} y={foot + 32} text-anchor="end">
        yellower
      </text>
      {frame && <path class="grid-frame under" d={frame} />}
      {frame && <path class="grid-frame" d={frame} />}
      {readings.map((lab, i) => (
        <g key={i}>
          <circle class="grid-ring" cx={across(hueDeg(lab.a, lab.b))} cy={down(lab.l)} r="8.5" />
          <circle
            class="grid-dot"
            cx={across(hueDeg(lab.a, lab.b))}
            cy={down(lab.l)}
            r="6.5"
            fill={fill(lab)}
          />
        </g>
      ))}
      {doubt && (
        <rect x={cell.left} y={foot + 40} width={right - cell.left} height="32" fill={fill(doubt.mean)} />
      )}
      {doubt && (
        <text class="card-text" x={right + 6} y={foot + 60}>
          as read
        </text>
      )}
    </svg>
  );
}
