import { exampleBrow } from '#lib/colour/coverage/exampleBrow.ts';
import { dotsAtRandom, strokesApart, strokesCrossing } from '#lib/colour/coverage/strokePlaces.ts';
import { fixed } from '#words/number.ts';
import { percent, strokesAlt } from '#words/strokesAndDots.ts';

type Within = Readonly<{ share: number; lo: number; hi: number }>;
type Props = Readonly<{
  id: string;
  made: 'apart' | 'crossing' | 'dots';
  count: number;
  lengthMm: number;
  areaMm2: number;
  perMm2: number;
  fresh: Within;
  spread: Within;
  freshMm: number;
  spreadMm: number;
}>;

const seed = 1;
const at = (x: number, y: number) => `${x.toFixed(1)} ${(-y).toFixed(1)}`;
const steps = Array.from({ length: 31 }, (_, i) => i / 30);

/**
 * The same brow twice, drawn to scale from its numbers: fresh above, the same marks spread below. One
 * drawing, two widths. Its paper, StrokesPaper, lies under it.
 */
export function StrokesOnPaper({
  id,
  made,
  count,
  lengthMm,
  areaMm2,
  perMm2,
  fresh,
  spread,
  freshMm,
  spreadMm,
}: Props) {
  const brow = exampleBrow(areaMm2);
  const strokes =
    made === 'dots'
      ? []
      : made === 'apart'
        ? strokesApart(brow, count, lengthMm)
        : strokesCrossing(brow, count, lengthMm, seed);
  const [first] = strokes;
  /** The front leans as its first stroke does, so that strokes side by side fill it to the edge. */
  const lean = made === 'apart' && first ? (first[2][0] - first[0][0]) / 2 / brow.lengthMm : 0;
  const edge = (side: 1 | -1) =>
    steps.map((step): readonly [number, number] => {
      const s = side * lean + step * (1 - side * lean);
      return [s * brow.lengthMm, brow.middleMm(s) + (side * brow.thicknessMm(s)) / 2];
    });
  const [upper, lower] = [edge(1), edge(-1)];
  const top = Math.ceil(Math.max(...upper.map(([, y]) => y))) + 5;
  const foot = Math.ceil(-Math.min(...lower.map(([, y]) => y))) + 5;
  const one = top + foot;
  const marks =
    made === 'dots'
      ? dotsAtRandom(brow, Math.round(perMm2 * areaMm2), seed).map(
          ([x, y]) => `M${x.toFixed(2)} ${(-y).toFixed(2)}h0`,
        )
      : strokes.map(([a, b, c]) => `M${at(...a)}Q${at(...b)} ${at(...c)}`);
  const panel = (name: string, mm: number, { share, lo, hi }: Within, y: number) => (
    <g transform={`translate(0 ${y})`}>
      <text class="b" x="0" y={2.2 - top}>
        {name}
      </text>
      <text class="num" x="46" y={2.2 - top} text-anchor="end">
        {fixed(mm, 2)} mm, {percent(share)} covered
      </text>
      <use href={`#${id}-marks`} stroke-width={mm} />
      <path
        class="sd-edge"
        d={`M${[...upper, ...lower.toReversed()].map(([x, v]) => at(x, v)).join('L')}Z`}
      />
      <rect class="sd-bar" x="0" y={foot - 3.6} width="46" height="1.3" />
      <rect class="sd-full" x="0" y={foot - 3.6} width={(46 * share).toFixed(1)} height="1.3" />
      <path
        class="sd-range"
        d={`M${(46 * lo).toFixed(1)} ${foot - 1.6}H${(46 * hi).toFixed(1)}M${(46 * lo).toFixed(1)} ${foot - 2}v.8M${(46 * hi).toFixed(1)} ${foot - 2}v.8`}
      />
    </g>
  );
  return (
    <svg
      class="plot sd"
      viewBox={`-3 ${-top} 52 ${2 * one}`}
      role="img"
      aria-label={strokesAlt({ fresh, spread })}
    >
      <defs>
        <path id={`${id}-marks`} class={made === 'dots' ? 'sd-marks dots' : 'sd-marks'} d={marks.join('')} />
      </defs>
      {panel('Fresh', freshMm, fresh, 0)}
      {panel('Spread', spreadMm, spread, one)}
    </svg>
  );
}
