import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { doNotCover } from '#skills/colour/doNotCover.ts';
import { fixed } from '#words/number.ts';
import { worseDate, type DoNotCoverGiven } from '#words/skills/doNotCover.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const fill = ([l, a, b]: readonly [number, number, number]) => srgbToHex(labToSrgb({ l, a, b }));
const x = (apart: number) => 6 + 7.6 * apart;

/**
 * Skin, old work and the wanted brown on the grey card, and a ruler of differences with the limit on it.
 * After marking, where the old work and the nearest recipe stand.
 */
function CoverSwatches({ given, at, right }: PictureProps<DoNotCoverGiven>) {
  const { skin, today, wanted, now } = given;
  const places = [
    ['old work', now, 56],
    ['recipe', worseDate(given), 64],
  ] as const;
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 76" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`Three swatches: bare skin, old work, the brown she wants. Below, a ruler of differences with the limit at 3${right === undefined ? '' : `: old work at ${fixed(now)}, nearest recipe at ${fixed(worseDate(given))}`}`}</title>
      <rect class="card" width="135" height="76" />
      {(
        [
          ['bare skin', skin],
          ['old work', today],
          ['wanted', wanted],
        ] as const
      ).map(([name, colour], i) => (
        <g key={name}>
          <rect x={6 + 42 * i} y="6" width="39" height="24" fill={fill(colour)} />
          <text class="card-s" x={6 + 42 * i} y="36">
            {name}
          </text>
        </g>
      ))}
      <path
        class="card-line"
        d={`M${x(0)} 48H${x(16)}${[0, 4, 8, 12, 16].map((tick) => `M${x(tick)} 46v4`).join('')}`}
      />
      <path class="card-line dash" d={`M${x(3)} 41V70`} />
      <text class="card-s" x={x(3)} y="74.5" text-anchor="middle">
        3
      </text>
      <text class="card-s" x={x(0)} y="74.5">
        reached
      </text>
      <text class="card-s" x={x(4)} y="74.5">
        not reached
      </text>
      {right !== undefined &&
        places.map(([name, apart, y]) => (
          <g key={name}>
            <circle class="grid-ring" cx={x(Math.min(16, apart))} cy={y} r="1.8" />
            <text
              class="card-s"
              x={apart > 11 ? x(Math.min(16, apart)) - 3 : x(Math.max(3, apart)) + 3}
              y={y + 1.5}
              text-anchor={apart > 11 ? 'end' : 'start'}
            >{`${name} ${fixed(apart)}`}</text>
          </g>
        ))}
    </svg>
  );
}

export default function DoNotCover(settings: ProblemSettings) {
  return <Problem skill={doNotCover} Picture={CoverSwatches} {...settings} />;
}
