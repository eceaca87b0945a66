import type { Lab } from '#lib/colour/spaces/lab.ts';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { fixed } from '#words/number.ts';
import { timeWords } from '#words/mixByDrops.ts';

type Outlook = Readonly<{
  years: number;
  plain: Lab;
  band: readonly Lab[];
  covered: Lab;
  dark: Readonly<{ plain: Lab }>;
}>;
type Props = Readonly<{
  /** In the bottle: too thick to see through. */
  bottle: Lab;
  times: readonly Outlook[];
  today: Lab;
  coverage: number;
  isLate: boolean;
}>;

const fill = (lab: Lab) => srgbToHex(labToSrgb(lab));
const [width, gap, left] = [88, 8, 12];

/** One patch of brow: strokes of pigmented skin on the ground, as many as the coverage asks. */
function StrokePatch({
  x,
  outlook,
  today,
  coverage,
}: Readonly<{ x: number; outlook: Outlook; today: Lab; coverage: number }>) {
  const strokes = 11;
  const pitch = width / strokes;
  return (
    <g>
      <rect x={x} y="28" width={width} height="62" fill={fill(today)} />
      {Array.from({ length: strokes }, (_, i) => (
        <rect
          key={i}
          x={x + i * pitch}
          y="28"
          width={Math.max(0.4, pitch * coverage)}
          height="62"
          fill={fill(outlook.covered)}
        />
      ))}
    </g>
  );
}

/**
 * The grey card: the mix in the bottle and today's skin, then each date: strokes, the colour from arm's
 * length, the band of simulated healings from darkest to lightest, and what would be left without yellow and
 * red.
 */
export function DropCard({ bottle, times, today, coverage, isLate }: Props) {
  return (
    <svg
      class={isLate ? 'drop-card late' : 'drop-card'}
      viewBox="0 0 400 322"
      role="img"
      aria-label={`Swatches on a grey card. In the bottle: L* ${fixed(bottle.l)}. Today: L* ${fixed(today.l)}. ${times.map(({ years, plain }) => `${timeWords(years)}: L* ${fixed(plain.l)}, a* ${fixed(plain.a)}, b* ${fixed(plain.b)}`).join('; ')}. Without yellow and red at the last date: L* ${fixed(times.at(-1)?.dark.plain.l ?? 0)}.`}
    >
      <rect class="card" width="400" height="322" />
      <text class="card-text" x={left} y="18">
        in the bottle
      </text>
      <rect x={left} y="28" width={width} height="62" fill={fill(bottle)} />
      <text class="card-num" x={left} y="106">
        L* {fixed(bottle.l)}
      </text>
      <text class="card-text" x={left} y="130">
        today
      </text>
      <rect x={left} y="138" width={width} height="94" fill={fill(today)} />
      <text class="card-num" x={left} y="260">
        L* {fixed(today.l)}
      </text>
      <text class="card-text" x={left} y="285">
        no yellow,
      </text>
      <text class="card-text" x={left} y="299">
        no red
      </text>
      {times.map((outlook, i) => {
        const x = left + (i + 1) * (width + gap);
        const part = width / Math.max(1, outlook.band.length);
        return (
          <g key={outlook.years}>
            <text class="card-text" x={x} y="18">
              {timeWords(outlook.years)}
            </text>
            <StrokePatch x={x} outlook={outlook} today={today} coverage={coverage} />
            <rect x={x} y="90" width={width} height="92" fill={fill(outlook.plain)} />
            {outlook.band.map((lab, at) => (
              <rect key={at} x={x + at * part} y="190" width={part} height="42" fill={fill(lab)} />
            ))}
            <path class="card-line" d={`M${x} 240h${width}M${x} 237v6M${x + width} 237v6`} />
            <text class="card-num" x={x} y="260">
              L* {fixed(outlook.plain.l)}
            </text>
            <rect x={x} y="270" width={width} height="30" fill={fill(outlook.dark.plain)} />
            <text class="card-num" x={x} y="315">
              L* {fixed(outlook.dark.plain.l)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
