import type { Repeat } from '#lib/mapping/uncertainty/technicalError.ts';
import { fixed, signed } from '#words/number.ts';

type Props = Readonly<{
  id: string;
  repeats: readonly Repeat[];
  repeatMm: number;
  shiftMm: number | undefined;
}>;

const half = 60;
const [left, right] = [17, 160] as const;
/** Enlargements, largest first: two centimetres of paper are then 1/2, 1, 2, 4 … mm. */
/**
 * Size of the paper's small square: a tenth of a millimetre while that can be seen, then one millimetre, then
 * ten.
 */
const squareOf = (scale: number) => (scale >= 10 ? scale / 10 : scale >= 1 ? scale : 10 * scale);
const scales = [40, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05] as const;

/**
 * Second minus first of every pair, in the order of reading, against 0 and the band that holds 95 of 100
 * pairs.
 */
export function DifferencePlot({ id, repeats, repeatMm, shiftMm }: Props) {
  const differences = repeats.map(({ firstMm, secondMm }) => secondMm - firstMm);
  const reachMm = 1.2 * Math.max(repeatMm, ...differences.map(Math.abs));
  const scale = scales.find((each) => each * reachMm <= half) ?? 0.05;
  const small = squareOf(scale);
  const stepMm = 10 / scale;
  const y = (mm: number) => (-mm * scale).toFixed(2);
  const x = (i: number) => (left + 4 + ((i + 0.5) * (right - left - 8)) / repeats.length).toFixed(2);
  const ticks = [-6, -4, -2, 0, 2, 4, 6].map((count) => count * stepMm);
  const isOut = (mm: number) => Math.abs(mm) > repeatMm;
  const out = differences.filter(isOut).length;
  const bandY = Number(y(repeatMm));
  return (
    <svg class="plot diff-plot" viewBox="0 -65 164 138" role="img" aria-labelledby={`${id}-t`}>
      <title
        id={`${id}-t`}
      >{`Differences of ${repeats.length} pairs of readings. ${out} lie outside the band of ${fixed(repeatMm, 2)} millimetres either side of 0.`}</title>
      <defs>
        <pattern id={`${id}-small`} width={small} height={small} patternUnits="userSpaceOnUse">
          <path class="paper-mm" d={`M${small} 0H0V${small}`} />
        </pattern>
        <pattern id={`${id}-large`} width={10 * small} height={10 * small} patternUnits="userSpaceOnUse">
          <rect width={10 * small} height={10 * small} fill={`url(#${id}-small)`} />
          <path class="paper-cm" d={`M${10 * small} 0H0V${10 * small}`} />
        </pattern>
      </defs>
      <rect y="-65" width="164" height="138" fill={`url(#${id}-large)`} />
      <rect class="band" x={left} y={bandY} width={right - left} height={-2 * bandY} />
      <path class="band-edge" d={`M${left},${bandY}H${right}M${left},${-bandY}H${right}`} />
      <path class="d-mark" d={`M${left},0H${right}M${left},-60V60`} />
      {ticks.map((mm) => (
        <text key={mm} class="halo" x={left - 2} y={Number(y(mm)) + 1.5} text-anchor="end">
          {signed(mm, scale > 20 ? 1 : 0)}
        </text>
      ))}
      {shiftMm !== undefined && <path class="shift" d={`M${left},${y(shiftMm)}H${right}`} />}
      {shiftMm !== undefined && (
        <text class="halo b" x={right} y={Number(y(shiftMm)) - 1.5} text-anchor="end">
          second pass {signed(shiftMm, 2)}
        </text>
      )}
      {differences.map((mm, i) => (
        <circle
          key={i}
          class={isOut(mm) ? 'dot out' : 'dot'}
          cx={x(i)}
          cy={y(mm)}
          r={isOut(mm) ? 1.9 : 1.3}
        />
      ))}
      <text class="halo" x={right} y={bandY - 1.6} text-anchor="end">
        95 of 100 pairs: ± {fixed(repeatMm, 2)} mm
      </text>
      <text class="halo" x={left} y="69">
        first pair
      </text>
      <text class="halo" x={right} y="69" text-anchor="end">
        last pair
      </text>
      <text class="halo" x={(left + right) / 2} y="69" text-anchor="middle">
        second minus first, mm
      </text>
    </svg>
  );
}
