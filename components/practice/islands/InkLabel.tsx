import { inkLabel } from '#skills/colour/inkLabel.ts';
import { labelLines, type InkLabelGiven } from '#words/skills/inkLabel.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const lineOf: Readonly<Record<string, number>> = { 'no-use': 1, 'no-lot': 2, 'no-list': 3, past: 4 };

/**
 * The bottle with its label: grey bars for the lines, each with its name; the words stand above it. After
 * marking, the line that keeps it shut is struck through.
 */
function BottleLabel({ given, at, right }: PictureProps<InkLabelGiven>) {
  const struck = right === undefined ? undefined : lineOf[right];
  return (
    <svg class="plot pic-wide" viewBox="0 0 135 64" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {struck === undefined
          ? 'A bottle with its label; the words stand above'
          : 'A bottle with its label; the line that keeps it shut is struck through'}
      </title>
      <path class="label-bottle" d="M12 18h6V6h12v12h6v40H12Z M18 10h12" />
      <path class="label-lead" d="M36 26L48 8M36 50L48 58" />
      <rect class="label-paper" x="48" y="4" width="82" height="56" />
      {labelLines(given).map(({ name, text }, i) => (
        <g key={name}>
          <text class="label-name" x="52" y={14 + 10 * i}>
            {name}
          </text>
          <path
            class={struck === i ? 'label-line struck' : 'label-line'}
            d={`M74 ${12.6 + 10 * i}h${Math.min(52, text.length * 0.9)}`}
          />
        </g>
      ))}
      {struck !== undefined && <path class="label-strike" d={`M51 ${12.6 + 10 * struck}H128`} />}
    </svg>
  );
}

export default function InkLabel(settings: ProblemSettings) {
  return <Problem skill={inkLabel} Picture={BottleLabel} {...settings} />;
}
