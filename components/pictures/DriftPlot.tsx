import type { DriftPoint } from '#lib/colour/healing/drift.ts';
import { fixed } from '#words/number.ts';

type Props = Readonly<{ id: string; points: readonly DriftPoint[] }>;
type Axis = 'l' | 'a' | 'b';

const [left, right, height, pitch] = [16, 124, 40, 50] as const;
const names = { l: 'L* lightness', a: 'a* red', b: 'b* yellow' } as const satisfies Readonly<
  Record<Axis, string>
>;
const lines = { l: 'plain', a: 'dash', b: 'dots' } as const;
const x = (weeks: number) => left + (weeks / 110) * (right - left);

/**
 * One of the three numbers over two years: the plain prediction as a line, nine in ten healings as a grey
 * field.
 */
function Strip({
  axis,
  points,
  top,
  span,
}: Readonly<{ axis: Axis; points: readonly DriftPoint[]; top: number; span: number }>) {
  const middle =
    (Math.max(...points.map((point) => point[axis][1])) +
      Math.min(...points.map((point) => point[axis][0]))) /
    2;
  const from = Math.round(middle - span / 2);
  const y = (value: number) => top + height - ((value - from) / span) * height;
  const at = (value: number) => y(value).toFixed(2);
  const band = [
    ...points.map(({ weeks, [axis]: [lo] }) => `${x(weeks).toFixed(2)} ${at(lo)}`),
    ...points.toReversed().map(({ weeks, [axis]: [, hi] }) => `${x(weeks).toFixed(2)} ${at(hi)}`),
  ];
  const last = points.at(-1);
  return (
    <g>
      <path class="plot-band" d={`M${band.join('L')}Z`} />
      <path class="plot-axis" d={`M${left} ${top}v${height}H${right}`} />
      {[from, from + span / 2, from + span].map((value) => (
        <text key={value} x={left - 2} y={y(value) + 1.5} text-anchor="end">
          {fixed(value, 0)}
        </text>
      ))}
      <path
        class={`plot-line ${lines[axis]}`}
        d={points
          .map(({ weeks, plain }, i) => `${i === 0 ? 'M' : 'L'}${x(weeks).toFixed(2)} ${at(plain[axis])}`)
          .join('')}
      />
      {points.map(({ weeks, plain }) => (
        <circle key={weeks} class="plot-dot" cx={x(weeks)} cy={y(plain[axis])} r="1" />
      ))}
      {last && (
        <text x={right + 3} y={y(last.plain[axis]) + 1.5}>
          {names[axis]}
        </text>
      )}
    </g>
  );
}

/**
 * L*, a* and b* from fresh to two years, each on its own strip and all on one scale, so that slopes can be
 * compared.
 */
export function DriftPlot({ id, points }: Props) {
  const axes = ['l', 'a', 'b'] as const;
  const widest = Math.max(
    ...axes.map(
      (axis) =>
        Math.max(...points.map((point) => point[axis][1])) -
        Math.min(...points.map((point) => point[axis][0])),
    ),
  );
  const span = Math.max(10, 2 * Math.ceil((widest + 1) / 2));
  const [first, last] = [points[0], points.at(-1)];
  const dates = [
    { weeks: 0, name: 'fresh' },
    { weeks: 58, name: 'one year' },
    { weeks: 110, name: 'two years' },
  ];
  return (
    <svg class="plot colour-plot" viewBox="0 0 164 160" role="img" aria-labelledby={`${id}-t`}>
      <title id={`${id}-t`}>
        {first && last
          ? `The brow from fresh to two years, with 9 in 10 simulated healings: L* ${fixed(first.plain.l)} to ${fixed(last.plain.l)}, a* ${fixed(first.plain.a)} to ${fixed(last.plain.a)}, b* ${fixed(first.plain.b)} to ${fixed(last.plain.b)}.`
          : ''}
      </title>
      {axes.map((axis, i) => (
        <Strip key={axis} axis={axis} points={points} top={4 + i * pitch} span={span} />
      ))}
      {dates.map(({ weeks, name }) => (
        <text key={name} x={x(weeks)} y="151" text-anchor={weeks === 0 ? 'start' : 'middle'}>
          {name}
        </text>
      ))}
      <text x={left} y="158">
        grey: 9 in 10 simulated healings
      </text>
    </svg>
  );
}
