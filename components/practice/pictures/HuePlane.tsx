import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { fixed } from '#words/number.ts';
import type { NeutraliseDirectionGiven } from '#words/skills/neutraliseDirection.ts';
import type { PictureProps } from '../bound.ts';

type Three = readonly [number, number, number];
type PlaneProps = Omit<PictureProps<NeutraliseDirectionGiven>, 'given'> &
  Readonly<{
    given: Pick<NeutraliseDirectionGiven, 'skin' | 'today'> &
      Readonly<{ bottles: readonly Readonly<{ id: string; move: Three }>[] }>;
  }>;
const fill = ([l, a, b]: Three) => srgbToHex(labToSrgb({ l, a, b }));
const names: Readonly<Record<string, string>> = {
  orange: 'orange',
  'yellow-oxide-some-white': 'yellow',
  'red-oxide-some-yellow': 'red',
  'dark-brown-iron': 'brown',
  'black-iron': 'black',
  yours: 'yours',
};
const [left, top, unit] = [62, 6, 2.3];
const x = (a: number) => left + 8 + (a + 3) * unit;
const y = (b: number) => top + (27 - b) * unit;

/**
 * Skin and old work side by side, and both as places in the plane of red and yellow. After marking, the way
 * back and each bottle's direction.
 */
export function HuePlane({ given: { skin, today, bottles }, at, right }: PlaneProps) {
  const [, skinA, skinB] = skin;
  const [, oldA, oldB] = today;
  // Each line a little longer than the one before, so that names do not meet.
  const ways = (
    right === undefined
      ? []
      : bottles.toSorted(
          (one, other) => Math.atan2(one.move[2], one.move[1]) - Math.atan2(other.move[2], other.move[1]),
        )
  ).map(({ id, move: [, a, b] }, i) => {
    const long = (oldA > 12 ? 6 + 2 * i : 10 + 6 * i) / Math.max(0.1, Math.hypot(a, b));
    return { id, a: a * long, b: b * long };
  });
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 86" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`Bare skin at a* ${fixed(skinA)}, b* ${fixed(skinB)}; old work at a* ${fixed(oldA)}, b* ${fixed(oldB)}${right === undefined ? '' : `, with the way back${bottles.length > 0 ? ' and the direction of each bottle' : ''}`}`}</title>
      <rect class="card" width="135" height="86" />
      <rect x="6" y="6" width="44" height="28" fill={fill(skin)} />
      <rect x="6" y="34" width="44" height="28" fill={fill(today)} />
      <text class="card-s" x="6" y="70">
        above: bare skin, L* {fixed(skin[0])}
      </text>
      <text class="card-s" x="6" y="77">
        below: old work, L* {fixed(today[0])}
      </text>
      <path class="card-line" d={`M${x(-3)} ${y(0)}H${x(22)}M${x(0)} ${y(27)}V${y(-4)}`} />
      <text class="card-s" x="132" y={y(0) + 5} text-anchor="end">
        redder
      </text>
      <text class="card-s over" x={x(0) + 1.5} y={top + 4}>
        yellower
      </text>
      {right !== undefined && (
        <path
          class="card-line"
          d={`M${x(oldA)} ${y(oldB)}L${x(skinA)} ${y(skinB)}`}
          stroke-dasharray="2 1.5"
        />
      )}
      <path class="card-line" d={ways.map(({ a, b }) => `M${x(oldA)} ${y(oldB)}l${a} ${-b}`).join('')} />
      {ways.map(({ id, a, b }) => (
        <text
          key={id}
          class="card-s over"
          x={x(oldA) + a + (a < 0 || oldA > 12 ? -1.5 : 1.5)}
          y={y(oldB) - b + (b < 0 ? 4 : -0.5)}
          text-anchor={a < 0 || oldA > 12 ? 'end' : 'start'}
        >
          {names[id] ?? ''}
        </text>
      ))}
      <circle class="grid-ring" cx={x(oldA)} cy={y(oldB)} r="1.8" />
      <text class="card-s over" x={x(oldA) - 3} y={y(oldB) + 1.5} text-anchor="end">
        old
      </text>
      <circle class="grid-ring" cx={x(skinA)} cy={y(skinB)} r="1.8" />
      <text class="card-s over" x={x(skinA) + 3} y={y(skinB) + 1.5}>
        skin
      </text>
    </svg>
  );
}
