import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { lamp } from '#skills/colour/lamp.ts';
import type { LampGiven } from '#words/skills/lamp.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const fill = ([l, a, b]: LampGiven['wanted']) => srgbToHex(labToSrgb({ l, a, b }));
const [left, pitch, width] = [22, 28, 26] as const;
const lamps = [
  { lamp: 'D65', name: 'daylight' },
  { lamp: 'A', name: 'tungsten' },
] as const;

/**
 * The wanted colour and three mixes, one row for each lamp. After marking, the lamp that counts is framed.
 */
function TwoLamps({ given: { lamp: wantedUnder, wanted, mixes }, at, right }: PictureProps<LampGiven>) {
  const names = ['first', 'second', 'third'] as const;
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 66" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`The wanted colour, read in ${wantedUnder === 'D65' ? 'daylight' : 'tungsten light'} only, beside three mixes in daylight and in tungsten light${right === undefined ? '' : `; the nearest is the ${names[mixes.findIndex(({ id }) => id === right)] ?? ''}`}`}</title>
      <rect class="card" width="135" height="66" />
      <text class="card-s" x={left} y="7">
        wanted
      </text>
      {names.map((name, i) => (
        <text key={name} class="card-s" x={left + pitch * (i + 1)} y="7">
          {name}
        </text>
      ))}
      {lamps.map(({ lamp: lit, name }, row) => (
        <g key={lit}>
          <text class="card-s" x="2" y={24 + 28 * row}>
            {name}
          </text>
          {lit === wantedUnder && (
            <rect x={left} y={10 + 28 * row} width={width} height="24" fill={fill(wanted)} />
          )}
          {mixes.map((mix, i) => (
            <rect
              key={mix.id}
              x={left + pitch * (i + 1)}
              y={10 + 28 * row}
              width={width}
              height="24"
              fill={fill(mix[lit])}
            />
          ))}
          {right !== undefined &&
            lit === wantedUnder &&
            mixes.map(
              (mix, i) =>
                mix.id === right && (
                  <rect
                    key={mix.id}
                    class="grid-frame"
                    x={left + pitch * (i + 1)}
                    y={10 + 28 * row}
                    width={width}
                    height="24"
                  />
                ),
            )}
        </g>
      ))}
    </svg>
  );
}

export default function Lamp(settings: ProblemSettings) {
  return <Problem skill={lamp} Picture={TwoLamps} {...settings} />;
}
