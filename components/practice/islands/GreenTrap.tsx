import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { greenTrap } from '#skills/colour/greenTrap.ts';
import { fixed } from '#words/number.ts';
import { aAfter, type GreenTrapGiven } from '#words/skills/greenTrap.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const fill = ([l, a, b]: readonly [number, number, number]) => srgbToHex(labToSrgb({ l, a, b }));
const x = (a: number) => 80 + 11 * a;
const shortNames = {
  yellow: 'yellow',
  'little-black': '3 to 1',
  'equal-black': 'equal',
  'much-black': '1 to 2',
  'with-orange': 'with orange',
} as const;

/** Skin and old work as swatches, and a* as a line with nought on it. After marking, where each mix ends. */
function GreenPlane({ given, at, right }: PictureProps<GreenTrapGiven>) {
  const { skin, today, mixes } = given;
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 68" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`Bare skin and old work, and a line of a* with green below nought. The old work stands at ${fixed(today[1])}${right === undefined ? '' : `; ${mixes.map((mix) => `${shortNames[mix.id]} ends at ${fixed(aAfter(given, mix))}`).join(', ')}`}`}</title>
      <rect class="card" width="135" height="68" />
      <rect x="6" y="6" width="34" height="22" fill={fill(skin)} />
      <rect x="6" y="28" width="34" height="22" fill={fill(today)} />
      <text class="card-s" x="6" y="57">
        above: skin
      </text>
      <text class="card-s" x="6" y="63.5">
        below: old work
      </text>
      <path
        class="card-line"
        d={`M${x(-2.6)} 14H${x(4.4)}${[-2, -1, 0, 1, 2, 3, 4].map((tick) => `M${x(tick)} 12.5v3`).join('')}`}
      />
      <path class="card-line dash" d={`M${x(0)} 6V63`} />
      <text class="card-s" x={x(0) - 2} y="9" text-anchor="end">
        green
      </text>
      <text class="card-s" x={x(0) + 2} y="9">
        red
      </text>
      {[
        ['today', today[1]] as const,
        ...(right === undefined ? [] : mixes.map((mix) => [shortNames[mix.id], aAfter(given, mix)] as const)),
      ].map(([name, a], i) => (
        <g key={name}>
          <circle class="grid-ring" cx={x(a)} cy={22 + 11 * i} r="1.8" />
          <text
            class="card-s"
            x={a < 0 ? x(0) + 2 : x(a) + (a > 1.6 ? -3 : 3)}
            y={23.5 + 11 * i}
            text-anchor={a > 1.6 ? 'end' : 'start'}
          >{`${name} ${fixed(a)}`}</text>
        </g>
      ))}
    </svg>
  );
}

export default function GreenTrap(settings: ProblemSettings) {
  return <Problem skill={greenTrap} Picture={GreenPlane} {...settings} />;
}
