type Props = Readonly<{ id: string; hundredMm: readonly number[]; differenceMm: number }>;

const binMm = 0.25;
const widthMm = 8;

/**
 * A hundred people as pencil strokes above a ruler of differences; those at or past the chosen one are dark.
 */
export function HundredStrokes({ id, hundredMm, differenceMm }: Props) {
  const stacks = new Map<number, number>();
  const strokes = hundredMm.map((at) => {
    const bin = Math.min(widthMm / binMm - 1, Math.floor(at / binMm));
    const row = stacks.get(bin) ?? 0;
    stacks.set(bin, row + 1);
    return { x: 10 + (bin + 0.5) * 4.5, y: 62 - row * 4.8, isPast: at >= differenceMm };
  });
  const x = 10 + (differenceMm / binMm) * 4.5;
  const past = strokes.filter(({ isPast }) => isPast).length;
  return (
    <svg class="plot hundred" viewBox="0 0 164 84" role="img" aria-labelledby={`${id}-t`}>
      <title
        id={`${id}-t`}
      >{`A hundred people along a ruler from 0 to 8 millimetres. ${past} of them stand at or past the chosen difference.`}</title>
      <path
        class="strokes-less"
        d={strokes
          .filter((s) => !s.isPast)
          .map((s) => `M${s.x},${s.y}v-3.4`)
          .join('')}
      />
      <path
        class="strokes-past"
        d={strokes
          .filter((s) => s.isPast)
          .map((s) => `M${s.x},${s.y}v-3.4`)
          .join('')}
      />
      <path
        class="ruler-line"
        d={`M10,66H154${Array.from({ length: 9 }, (_, i) => `M${10 + i * 18},66v3`).join('')}`}
      />
      {Array.from({ length: 9 }, (_, i) => (
        <text key={i} class="ruler-no" x={10 + i * 18} y="75" text-anchor="middle">
          {i}
        </text>
      ))}
      <text class="ruler-no" x="154" y="82" text-anchor="end">
        mm apart
      </text>
      <path class="here-line" d={`M${x.toFixed(2)},66V8`} />
      <circle class="here-pin" cx={x.toFixed(2)} cy="66" r="1.8" />
      <circle class="here-pin open" cx={x.toFixed(2)} cy="8" r="1.6" />
      <text
        class="here-no"
        x={x > 120 ? x - 3 : x + 3}
        y="13"
        text-anchor={x > 120 ? 'end' : 'start'}
      >{`${past} of 100`}</text>
    </svg>
  );
}
