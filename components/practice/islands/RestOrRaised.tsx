import { BrowOverEye } from '#components/pictures/BrowShape.tsx';
import { restOrRaised } from '#skills/mapping/restOrRaised.ts';
import { fixed } from '#words/number.ts';
import { faultOf, type RestOrRaisedGiven } from '#words/skills/restOrRaised.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const rowMm = 37;

/**
 * The three readings one below the other, each with its arches' heights. After marking: a ring round the
 * number of one that may be mapped.
 */
function ThreeReadings({ given: { readings }, at, yours, right }: PictureProps<RestOrRaisedGiven>) {
  return (
    <svg
      class="plot pic-wide"
      viewBox={`-74 -31 148 ${3 * rowMm + 4}`}
      role="img"
      aria-labelledby={`${at}-t`}
    >
      <title id={`${at}-t`}>
        Three readings of the same brows, one below the other; the heights are in the table
      </title>
      <MmPaper at={at} x={-74} y={-31} width={148} height={3 * rowMm + 4} />
      {readings.map((reading, i) => {
        const code = `reading-${i + 1}`;
        return (
          <g key={code} transform={`translate(0 ${i * rowMm})`}>
            <path class="d-ref" d="M-60 0H60" />
            <BrowOverEye side="right" archMm={reading.rightMm} isClosed={reading.pose === 'eyes-closed'} />
            <BrowOverEye side="left" archMm={reading.leftMm} isClosed={reading.pose === 'eyes-closed'} />
            <text
              class={code === yours || code === right ? 's b halo' : 's halo'}
              x="-68"
              y="-14"
              text-anchor="middle"
            >
              {i + 1}
            </text>
            {right !== undefined && faultOf(reading) === undefined && (
              <circle class="ring" cx="-68" cy="-15.2" r="4" />
            )}
            <text class="s halo" x="0" y="-14" text-anchor="middle">
              {fixed(Math.abs(reading.leftMm - reading.rightMm))} mm
            </text>
          </g>
        );
      })}
    </svg>
  );
}

export default function RestOrRaised(settings: ProblemSettings) {
  return <Problem skill={restOrRaised} Picture={ThreeReadings} {...settings} />;
}
