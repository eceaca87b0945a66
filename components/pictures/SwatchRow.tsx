import type { Lab } from '#lib/colour/spaces/lab.ts';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { fixed } from '#words/number.ts';

type Props = Readonly<{
  swatches: readonly Readonly<{ name: string; lab: Lab }>[];
  label: string;
  isLate?: boolean;
  /** A colour laid along the foot of every other swatch, to compare edge to edge. */
  against?: Lab;
}>;

const [pitch, width, height] = [96, 88, 190];

/**
 * Colours side by side on the grey card, touching where they are to be compared, each with its name and
 * numbers.
 */
export function SwatchRow({ swatches, label, isLate = false, against }: Props) {
  const said = swatches
    .map(({ name, lab }) => `${name}: L* ${fixed(lab.l)}, a* ${fixed(lab.a)}, b* ${fixed(lab.b)}`)
    .join('; ');
  return (
    <svg
      class={isLate ? 'drop-card late' : 'drop-card'}
      viewBox={`0 0 ${swatches.length * pitch + 16} ${height}`}
      role="img"
      aria-label={`${label}. ${said}.`}
    >
      <rect class="card" width={swatches.length * pitch + 16} height={height} />
      {swatches.map(({ name, lab }, i) => (
        <g key={name}>
          <text class="card-text" x={12 + i * pitch} y="18">
            {name}
          </text>
          <rect x={12 + i * pitch} y="28" width={width} height="112" fill={srgbToHex(labToSrgb(lab))} />
          {against && lab !== against && (
            <rect x={12 + i * pitch} y="112" width={width} height="28" fill={srgbToHex(labToSrgb(against))} />
          )}
          <text class="card-num" x={12 + i * pitch} y="160">
            L* {fixed(lab.l)}
          </text>
          <text class="card-num" x={12 + i * pitch} y="176">
            {fixed(lab.a)} / {fixed(lab.b)}
          </text>
        </g>
      ))}
    </svg>
  );
}
