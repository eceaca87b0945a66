import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { hueLean } from '#skills/colour/hueLean.ts';
import { fixed } from '#words/number.ts';
import type { HueLeanGiven } from '#words/skills/hueLean.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const across = (hDeg: number) => 20 + ((Math.min(80, Math.max(38, hDeg)) - 38) / 42) * 95;

/**
 * Both skins side by side on the grey card. After marking, their hue angles with their doubts on one line
 * from red to yellow.
 */
function TwoSkins({ given: { first, second, doubtDeg }, at, right }: PictureProps<HueLeanGiven>) {
  const isMarked = right !== undefined;
  const skins = [first, second];
  return (
    <svg
      class="plot pic-wide drop-card"
      viewBox={`0 0 135 ${isMarked ? 74 : 46}`}
      role="img"
      aria-labelledby={`${at}-t`}
    >
      <title id={`${at}-t`}>
        {isMarked
          ? `Hue angles: the ${first.client} ${fixed(hueDeg(first.a, first.b))} degrees, the ${second.client} ${fixed(hueDeg(second.a, second.b))} degrees`
          : `Two swatches on a grey card: the ${first.client} and the ${second.client}`}
      </title>
      <rect class="card" width="135" height={isMarked ? 74 : 46} />
      {skins.map(({ client, l, a, b }, i) => (
        <g key={client}>
          <rect x={6 + 63 * i} y="6" width="60" height="28" fill={srgbToHex(labToSrgb({ l, a, b }))} />
          <text class="card-s" x={6 + 63 * i} y="41">
            {client}
          </text>
        </g>
      ))}
      {isMarked && (
        <text class="card-s" x="3" y="51">
          redder
        </text>
      )}
      {isMarked && (
        <text class="card-s" x="132" y="51" text-anchor="end">
          yellower
        </text>
      )}
      {isMarked &&
        skins.map(({ client, a, b }, i) => {
          const [h, y] = [hueDeg(a, b), 56 + 10 * i];
          return (
            <g key={client}>
              <path
                class="card-line"
                d={`M${across(h - doubtDeg)} ${y}H${across(h + doubtDeg)}M${across(h - doubtDeg)} ${y - 1.5}v3M${across(h + doubtDeg)} ${y - 1.5}v3`}
              />
              <circle class="grid-ring" cx={across(h)} cy={y} r="1.5" />
              <text class="card-s" x={across(h)} y={y + 6} text-anchor="middle">
                {client} {fixed(h)}°
              </text>
            </g>
          );
        })}
    </svg>
  );
}

export default function HueLean(settings: ProblemSettings) {
  return <Problem skill={hueLean} Picture={TwoSkins} {...settings} />;
}
