import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { ita } from '#skills/colour/ita.ts';
import { fixed } from '#words/number.ts';
import type { ItaGiven } from '#words/skills/ita.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const rad = Math.PI / 180;
const across = (yellow: number) => 74 + 2 * yellow;
const down = (lightness: number) => 31 - 0.9 * (lightness - 50);

/**
 * The skin as a swatch on the grey card, and beside it lightness over yellow. After marking, the angle from
 * middle grey, and yours.
 */
function SkinPatch({ given: { skinL: l, skinA: a, skinB: b }, at, yours, right }: PictureProps<ItaGiven>) {
  const isMarked = typeof right === 'number';
  const isApart =
    isMarked && typeof yours === 'number' && Math.abs(yours - right) > 0.35 && Math.abs(yours) < 90;
  const ray = (deg: number, length: number) =>
    `M${across(0)} ${down(50)}L${across(0) + length * Math.cos(Math.atan(0.45 * Math.tan(deg * rad)))} ${down(50) - length * Math.sin(Math.atan(0.45 * Math.tan(deg * rad)))}`;
  return (
    <svg class="plot pic-wide drop-card" viewBox="0 0 135 62" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {isMarked
          ? `Seen from middle grey the skin lies at ${fixed(right)} degrees`
          : 'The skin as a swatch, and a drawing of lightness over yellow with the skin as a dot'}
      </title>
      <rect class="card" width="135" height="62" />
      <rect x="6" y="8" width="46" height="46" fill={srgbToHex(labToSrgb({ l, a, b }))} />
      <path class="card-line thin" d={`M${across(0)} 6V56M${across(0)} ${down(50)}H131`} />
      <text class="card-s" x={across(0) - 2} y={down(50) + 1.3} text-anchor="end">
        50
      </text>
      <text class="card-s" x={across(0) + 2} y="9">
        L*
      </text>
      <text class="card-s" x="131" y={down(50) + (l > 50 ? 6 : -3)} text-anchor="end">
        yellow b*
      </text>
      {isMarked && <path class="card-line" d={ray(right, Math.hypot(2 * b, 0.9 * (l - 50)))} />}
      {isApart && <path class="card-line dash" d={ray(yours, 36)} />}
      <circle class="grid-ring" cx={across(b)} cy={down(l)} r="1.6" />
      {isMarked && (
        <text class="card-s" x={across(b) + 4} y={down(l) + (l > 50 ? -2 : 5)}>
          {fixed(right)}°
        </text>
      )}
    </svg>
  );
}

export default function Ita(settings: ProblemSettings) {
  return <Problem skill={ita} Picture={SkinPatch} {...settings} />;
}
