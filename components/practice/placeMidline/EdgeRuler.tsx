import { fixed } from '#words/number.ts';
import { placeView } from './placeView.ts';

const everyMm = Array.from({ length: 161 }, (_, i) => i - 80);
const tick = (mm: number) => (mm % 10 === 0 ? 3.6 : mm % 5 === 0 ? 2.4 : 1.4);

/** A ruler across the whole picture, ticks away from the face, numbers every 20 mm. */
export function EdgeRuler({ y, up = false }: Readonly<{ y: number; up?: boolean }>) {
  const out = up ? -1 : 1;
  return (
    <g>
      <rect
        class="edge-ruler-ground"
        x={placeView.x}
        y={up ? y - 10 : y}
        width={placeView.width}
        height="10"
      />
      <path
        class="d-ruler"
        d={`M${placeView.x},${y}H${placeView.x + placeView.width}${everyMm.map((mm) => `M${mm},${y}v${(tick(mm) * out).toFixed(1)}`).join('')}`}
      />
      {everyMm
        .filter((mm) => mm % 20 === 0 && Math.abs(mm) < 80)
        .map((mm) => (
          <text key={mm} class="edge-ruler-no" x={mm} y={up ? y - 4.8 : y + 8.6} text-anchor="middle">
            {fixed(mm, 0)}
          </text>
        ))}
    </g>
  );
}
