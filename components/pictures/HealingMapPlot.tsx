import { fixed } from '#words/number.ts';

type Look = 'as-assumed' | 'another-loss' | 'none';
type Place = Readonly<{ depthMm: number; dose: number }>;
type Props = Readonly<{
  label: string;
  rows: readonly Readonly<{ depthMm: number; looks: readonly Look[] }>[];
  doses: readonly number[];
  nearest: Place;
  plan: Place;
  isLate: boolean;
}>;

const [left, top, width, height] = [40, 22, 13, 14];

/**
 * Depth across, dose up: a large square fits with the loss as assumed, a small one with another loss only.
 * Ring: the nearest. Cross: the plan.
 */
export function HealingMapPlot({ label, rows, doses, nearest, plan, isLate }: Props) {
  const [columns, lines] = [rows.length, doses.length];
  const [firstDepth, secondDepth] = [rows[0]?.depthMm ?? 0, rows[1]?.depthMm ?? 1];
  const [lowest, highest] = [doses[0] ?? 1, doses.at(-1) ?? 2];
  const x = (depthMm: number) => left + width * ((depthMm - firstDepth) / (secondDepth - firstDepth) + 0.5);
  const y = (dose: number) =>
    top + height * (lines - 0.5 - ((lines - 1) * Math.log(dose / lowest)) / Math.log(highest / lowest));
  const [right, foot] = [left + columns * width, top + lines * height];
  const squares = (look: Look, side: number) =>
    rows
      .flatMap(({ depthMm, looks }) =>
        looks.flatMap((one, i) =>
          one === look
            ? [
                `M${(x(depthMm) - side / 2).toFixed(1)} ${(y(doses[i] ?? lowest) - side / 2).toFixed(1)}h${side}v${side}h${-side}z`,
              ]
            : [],
        ),
      )
      .join('');
  const marked = rows.filter((_, i) => i % 5 === 4);
  const [cross, down] = [x(plan.depthMm), y(plan.dose)];
  const isOnMap = cross > left && cross < right && down > top && down < foot;
  const plus = `M${cross - 6} ${down - 6}l12 12m0 -12l-12 12`;
  return (
    <svg
      class={isLate ? 'why-map late' : 'why-map'}
      viewBox={`0 0 ${right + 10} ${foot + 40}`}
      role="img"
      aria-label={label}
    >
      <rect class="why-field" x={left} y={top} width={right - left} height={foot - top} />
      <path
        class="why-grid"
        d={`${marked.map(({ depthMm }) => `M${x(depthMm)} ${top}V${foot}`).join('')}${doses
          .filter((_, i) => i % 2 === 0)
          .map((dose) => `M${left} ${y(dose)}H${right}`)
          .join('')}`}
      />
      <path class="why-fit" d={squares('as-assumed', 11)} />
      <path class="why-fit" d={squares('another-loss', 4)} />
      {isOnMap && <path class="why-cross under" d={plus} />}
      {isOnMap && <path class="why-cross" d={plus} />}
      <circle class="why-ring under" cx={x(nearest.depthMm)} cy={y(nearest.dose)} r="7.5" />
      <circle class="why-ring" cx={x(nearest.depthMm)} cy={y(nearest.dose)} r="7.5" />
      <text class="b" x={left - 6} y={top - 8} text-anchor="end">
        dose
      </text>
      {doses.map(
        (dose, i) =>
          i % 2 === 0 && (
            <text key={dose} x={left - 6} y={y(dose) + 4} text-anchor="end">
              {fixed(dose, 2)}
            </text>
          ),
      )}
      {marked.map(({ depthMm }) => (
        <text key={depthMm} x={x(depthMm)} y={foot + 15} text-anchor="middle">
          {fixed(depthMm, 2)}
        </text>
      ))}
      <text class="b" x={right} y={foot + 32} text-anchor="end">
        model depth, mm: not a needle length
      </text>
    </svg>
  );
}
