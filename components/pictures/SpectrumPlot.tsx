import { bandsNm, type Spectrum } from '#lib/colour/spectrum/bands.ts';
import { fixed } from '#words/number.ts';

type Curve = Readonly<{ name: string; line: 'plain' | 'dash' | 'dots'; spectrum: Spectrum }>;
type Props = Readonly<{ id: string; curves: readonly Curve[] }>;

const [left, right, top, bottom] = [16, 124, 6, 78] as const;
const x = (nm: number) => left + ((nm - 380) / 350) * (right - left);

/** Heights for the names at the ends of the curves: as near as may be, never closer than a line. */
function parted(heights: readonly number[], apart = 6): readonly number[] {
  const order = heights
    .map((height, i) => ({ height, i }))
    .toSorted((one, other) => one.height - other.height);
  const placed = new Array<number>(heights.length).fill(0);
  let last = -Infinity;
  for (const { height, i } of order) {
    last = Math.max(height, last + apart);
    placed[i] = last;
  }
  return placed;
}

/** Share of light thrown back, by wavelength. Each curve has its own line and its name at its end. */
export function SpectrumPlot({ id, curves }: Props) {
  const most = Math.max(...curves.flatMap(({ spectrum }) => spectrum));
  const reach = Math.min(1, Math.ceil(most * 10) / 10);
  const y = (share: number) => bottom - (share / reach) * (bottom - top);
  const ticks = [0, 0.5, 1].map((part) => part * reach);
  const names = parted(curves.map(({ spectrum }) => y(spectrum.at(-1) ?? 0)));
  return (
    <svg class="plot colour-plot" viewBox="0 0 164 92" role="img" aria-labelledby={`${id}-t`}>
      <title
        id={`${id}-t`}
      >{`Light thrown back, from violet at 380 to red at 730 nanometres. ${curves.map(({ name, spectrum }) => `${name}: ${fixed(100 * (spectrum[0] ?? 0), 0)} to ${fixed(100 * (spectrum.at(-1) ?? 0), 0)} of 100`).join('; ')}.`}</title>
      <path class="plot-axis" d={`M${left} ${top}V${bottom}H${right}`} />
      {ticks.map((share) => (
        <text key={share} x={left - 2} y={y(share) + 1.5} text-anchor="end">
          {fixed(100 * share, 0)}
        </text>
      ))}
      {[400, 500, 600, 700].map((nm) => (
        <text key={nm} x={x(nm)} y={bottom + 6} text-anchor="middle">
          {nm}
        </text>
      ))}
      {[400, 500, 600, 700].map((nm) => (
        <path key={nm} class="plot-axis" d={`M${x(nm)} ${bottom}v1.6`} />
      ))}
      {curves.map(({ name, line, spectrum }, i) => (
        <g key={name}>
          <path
            class={`plot-line ${line}`}
            d={spectrum
              .map(
                (share, band) =>
                  `${band === 0 ? 'M' : 'L'}${x(bandsNm[band] ?? 0).toFixed(2)} ${y(share).toFixed(2)}`,
              )
              .join('')}
          />
          <path
            class="plot-axis"
            d={`M${right + 0.6} ${y(spectrum.at(-1) ?? 0).toFixed(2)}L${right + 3.4} ${(names[i] ?? 0).toFixed(2)}`}
          />
          <text x={right + 4.4} y={(names[i] ?? 0) + 1.5}>
            {name}
          </text>
        </g>
      ))}
      <text x={(left + right) / 2} y="90" text-anchor="middle">
        wavelength, nm
      </text>
      <text x={left + 2} y={top + 1}>
        of 100 parts of light
      </text>
    </svg>
  );
}
