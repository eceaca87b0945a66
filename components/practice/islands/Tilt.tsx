import { tilt } from '#skills/mapping/tilt.ts';
import { fixed } from '#words/number.ts';
import type { TiltGiven } from '#words/skills/tilt.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const rad = Math.PI / 180;

/**
 * Two level points and a thread that leans through their middle. Before marking the lean is only a sketch;
 * after it, true, with both answers.
 */
function TiltedLine({ given, at, yours, right }: PictureProps<TiltGiven>) {
  const { spanMm } = given;
  const isMarked = typeof right === 'number';
  const lean = given.asks === 'height' ? given.tiltDeg : isMarked ? right : 3;
  const half = spanMm / 2;
  const reach = half + 12;
  const rise = (x: number) => -x * Math.sin(lean * rad);
  const fakedMm = 2 * Math.abs(rise(half));
  const isApart = isMarked && typeof yours === 'number' && Math.abs(yours - right) > 0.15;
  const top = -13;
  return (
    <svg class="plot pic-wide" viewBox={`-74 ${top} 148 29`} role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {isMarked
          ? `A thread ${fixed(lean)} degrees off level makes ${fixed(fakedMm)} mm between two points ${spanMm} mm apart`
          : `Two level points ${spanMm} mm apart and a thread off level`}
      </title>
      <MmPaper at={at} x={-74} y={top} width={148} height={29} />
      <path class="dim" d={`M${-half} 0H${half}M${-half} 9.5H${half}M${-half} 8v3M${half} 8v3`} />
      <text class="s halo" x="0" y="14" text-anchor="middle">
        {spanMm} mm
      </text>
      <path class="d-ref" d={`M${-reach} ${rise(-reach)}L${reach} ${rise(reach)}`} />
      <rect class="d-r" x={-half - 1.3} y="-1.3" width="2.6" height="2.6" />
      <circle class="d-l" cx={half} cy="0" r="1.45" />
      {isMarked && <path class="range" d={`M${-half} 0V${rise(-half)}M${half} 0V${rise(half)}`} />}
      <text class={isMarked ? 's b halo' : 's halo'} x="-71" y={top + 5}>
        {isMarked
          ? `${fixed(lean)}°: ${fixed(fakedMm)} mm`
          : given.asks === 'height'
            ? `thread ${fixed(lean)}° off level`
            : `read ${fixed(given.heightMm)} mm; thread off level by how much?`}
      </text>
      {isApart && (
        <text class="s halo" x="71" y={top + 5} text-anchor="end">
          yours {fixed(yours)}
          {given.asks === 'height' ? ' mm' : '°'}
        </text>
      )}
    </svg>
  );
}

export default function Tilt(settings: ProblemSettings) {
  return <Problem skill={tilt} Picture={TiltedLine} {...settings} />;
}
