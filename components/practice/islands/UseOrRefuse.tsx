import { useOrRefuse } from '#skills/mapping/useOrRefuse.ts';
import type { UseOrRefuseGiven } from '#words/skills/useOrRefuse.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

/**
 * How the picture was taken, from the side: camera, distance, head. What is wanted is drawn strong after
 * marking. Not to scale.
 */
function PictureCard({ given: { wanted, picture }, at, right }: PictureProps<UseOrRefuseGiven>) {
  const { cameraCm, atRest, levelKnown, hasRuler } = picture;
  const cameraX = 128 - cameraCm * 0.44;
  const lift = atRest ? 0 : 2;
  const line = -8 - lift;
  /** What the wanted number is measured along. */
  const measured = {
    'height-sides': `M15 ${line - 2.6}V-3.5M-15 ${line - 2.6}V-3.5`,
    'width-sides': `M-23 -1H23M-23 -2.5v3M0 -2.5v3M23 -2.5v3`,
    'tail-over-front': `M6 ${line}H27M23 ${line + 1}H27M26 ${line}v1`,
    'arch-share': `M6 -2H23M6 -3.5v3M16 -3.5v3M23 -3.5v3`,
    length: `M6 -2H23M6 -3.5v3M23 -3.5v3`,
  } as const;
  return (
    <svg class="plot pic-wide" viewBox="0 -34 190 66" role="img" aria-labelledby={`${at}-t`}>
      <title
        id={`${at}-t`}
      >{`A camera ${cameraCm} cm before a face; ${levelKnown ? 'a level thread' : 'no level'} and ${hasRuler ? 'a ruler' : 'no ruler'} in the picture. Not to scale`}</title>
      <path class="dim" d={`M${cameraX - 9} -6h9v12h-9zM${cameraX} -2.5l4 -2v9l-4 -2`} />
      <path class="dim" d={`M${cameraX + 5} 22H127M${cameraX + 5} 20.5v3M127 20.5v3`} />
      <text class="s halo" x={(cameraX + 132) / 2} y="28" text-anchor="middle">{`${cameraCm} cm`}</text>
      <path
        class="d-face"
        d="M134 -14Q138 -28 154 -28Q176 -28 176 -6Q176 8 168 14L167 24M134 -14Q136 -8 134 -5Q128 4 129 6Q131 8 135 7Q132 11 135 13Q133 16 136 18Q142 22 150 17"
      />
      <g transform="translate(60 -12)">
        <path class="dim" d="M-30 -18H30V24H-30Z" />
        {[-1, 1].map((way) => (
          <g key={way}>
            <path
              class="d-brow"
              d={`M${6 * way} ${-8 - lift}Q${16 * way} ${-14 - lift} ${23 * way} ${-7 - lift}`}
            />
            <path
              class="d-face"
              d={`M${8 * way} 0Q${14 * way} -4 ${20 * way} 0Q${14 * way} 4 ${8 * way} 0`}
            />
          </g>
        ))}
        <path class="d-face" d={atRest ? 'M-8 17Q0 19 8 17' : 'M-8 16Q0 12 8 16Q0 23 -8 16'} />
        {levelKnown && <path class="d-ref" d="M-29 -3.5H29" />}
        {hasRuler && (
          <path
            class="dim"
            d="M4 -16.5H25M4 -16.5v2M9.25 -16.5v1.4M14.5 -16.5v2M19.75 -16.5v1.4M25 -16.5v2"
          />
        )}
        {right !== undefined && <path class="range" d={measured[wanted]} />}
      </g>
    </svg>
  );
}

export default function UseOrRefuse(settings: ProblemSettings) {
  return <Problem skill={useOrRefuse} Picture={PictureCard} {...settings} />;
}
