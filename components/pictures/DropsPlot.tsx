import { fixed } from '#words/number.ts';

type Nearest = Readonly<{ drops: number; difference: number }>;
type Props = Readonly<{
  nearest: readonly Nearest[];
  /** How many drops the recipe that is shown has. */
  ringedDrops: number;
  goodBelow: number;
  reachedBelow: number;
  isLate: boolean;
}>;

const [left, right, top, bottom] = [12, 158, 12, 76] as const;

/** How near the nearest recipe comes with each number of drops: more drops soon gain nothing. */
export function DropsPlot({ nearest, ringedDrops, goodBelow, reachedBelow, isLate }: Props) {
  const most = Math.max(1, ...nearest.map(({ drops }) => drops));
  const reach = Math.ceil(Math.max(reachedBelow + 0.5, ...nearest.map(({ difference }) => difference)));
  const x = (drops: number) => left + ((drops - 0.5) / most) * (right - left);
  const y = (difference: number) => bottom - (Math.min(difference, reach) / reach) * (bottom - top);
  const ringed = nearest.find(({ drops }) => drops === ringedDrops);
  const dots = nearest.map((each) => ({ ...each, place: { cx: x(each.drops), cy: y(each.difference) } }));
  return (
    <svg
      class={`plot colour-plot drops-plot${isLate ? ' late' : ''}`}
      viewBox="0 0 164 92"
      role="img"
      aria-label={`Difference of the nearest recipe. ${nearest.map(({ drops, difference }) => `${drops} ${drops === 1 ? 'drop' : 'drops'}: ${fixed(difference)}`).join('; ')}.`}
    >
      <rect class="plot-band" x={left} y={y(goodBelow)} width={right - left} height={bottom - y(goodBelow)} />
      <path class="plot-axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <path class="plot-line dash" d={`M${left} ${y(reachedBelow)}H${right}`} />
      <text x={right} y={y(reachedBelow) - 1.6} text-anchor="end">
        under {reachedBelow}: near
      </text>
      {[0, reach].map((value) => (
        <text key={value} x={left - 2} y={y(value) + 1.5} text-anchor="end">
          {value}
        </text>
      ))}
      {dots.map(({ drops, place }) => (
        <circle key={drops} class="plot-dot" {...place} r="1.5" />
      ))}
      {ringed && <circle class="plot-ring" cx={x(ringed.drops)} cy={y(ringed.difference)} r="3.2" />}
      {dots.map(({ drops, place }) => (
        <text key={drops} x={place.cx} y={bottom + 6} text-anchor="middle">
          {drops}
        </text>
      ))}
      <text x={left} y={top - 5}>
        difference from the target
      </text>
      <text x={(left + right) / 2} y="90" text-anchor="middle">
        drops
      </text>
    </svg>
  );
}
