import { isMirroredBy, sideInHalf } from '#lib/mapping/pose/pictureSide.ts';
import { flippedSelfie } from '#skills/mapping/flippedSelfie.ts';
import { signNames, type FlippedSelfieGiven } from '#words/skills/flippedSelfie.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { Problem } from '../Problem.tsx';

const places = { nose: [7, 22], scar: [27, 24], mole: [10, 35], stud: [6, 24], parting: [12, -33] } as const;

/**
 * The selfie as it lies on the screen: two brows, one sign. After marking, whose side is whose. Not to scale.
 */
function SelfieFrame({ given, at, right }: PictureProps<FlippedSelfieGiven>) {
  const { sign, signHalf, signSide, thing, thingHalf } = given;
  const way = (half: 'left' | 'right') => (half === 'left' ? -1 : 1);
  const [across, down] = places[sign];
  const x = way(signHalf) * across;
  const isMirrored = signSide !== 'not-written' && isMirroredBy({ side: signSide, half: signHalf });
  const isTold = right !== undefined && signSide !== 'not-written';
  const lean = sign === 'nose' ? way(signHalf) * 3 : 0;
  return (
    <svg class="plot pic-wide" viewBox="-70 -48 140 102" role="img" aria-labelledby={`${at}-t`}>
      <title id={`${at}-t`}>
        {isTold
          ? `The picture is ${isMirrored ? 'mirrored' : 'not mirrored'}: its left half is her ${sideInHalf('left', isMirrored)}`
          : 'The selfie on the screen, not to scale: two brows and one sign, as the text says'}
      </title>
      <path class="dim" d="M-46-44H46V50H-46Z" />
      <path
        class="d-face"
        d="M-38-20C-40 20-26 46 0 47C26 46 40 20 38-20M-24 2Q-15-5-7 2Q-15 6-24 2M24 2Q15-5 7 2Q15 6 24 2M-9 36Q0 41 9 36"
      />
      <path class="d-face" d={`M-3 4L${lean - 6} 24Q${lean} 28 ${lean + 6} 24`} />
      {sign === 'parting' && <path class="d-face" d="M-38-20C-38-52 38-52 38-20" />}
      {(['left', 'right'] as const).map((half) => {
        const up = thing === 'higher' && half === thingHalf ? 5 : 0;
        const out = thing === 'longer' && half === thingHalf ? 5 : 0;
        const w = way(half);
        return (
          <path
            key={half}
            class="d-brow"
            d={`M${6 * w} ${-8 - up}Q${20 * w} ${-17 - up} ${(29 + out) * w} ${-9 - up}`}
          />
        );
      })}
      {sign === 'nose' ? (
        <path
          class="d-mark"
          d={`M${lean} 31h${way(signHalf) * 8}m${-way(signHalf) * 2.4} -2l${way(signHalf) * 2.4} 2l${-way(signHalf) * 2.4} 2`}
        />
      ) : sign === 'scar' ? (
        <path class="d-mark" d={`M${x - 3} ${down - 3}l6 6`} />
      ) : sign === 'parting' ? (
        <path class="d-mark" d={`M${x} ${down - 9}v10`} />
      ) : (
        <circle class="dot" cx={x} cy={down} r="1.5" />
      )}
      <path
        class="leader"
        d={
          sign === 'parting'
            ? `M${x + way(signHalf) * 1.5} ${down - 2}H${way(signHalf) * 48}`
            : `M${x + way(signHalf) * (sign === 'nose' ? 4 : 4)} ${sign === 'nose' ? 31 : down}H${way(signHalf) * 48}`
        }
      />
      <text
        class="s halo"
        x={way(signHalf) * 49}
        y={(sign === 'nose' ? 31 : sign === 'parting' ? down - 2 : down) + 1.2}
        text-anchor={signHalf === 'left' ? 'end' : 'start'}
      >
        {signNames[sign]}
      </text>
      {isTold &&
        (['left', 'right'] as const).map((half) => {
          const side = sideInHalf(half, isMirrored);
          const w = way(half);
          return (
            <g key={half}>
              {side === 'right' ? (
                <rect class="d-r" x={52 * w - 1.6} y="-41.6" width="3.2" height="3.2" />
              ) : (
                <circle class="d-l" cx={52 * w} cy="-40" r="1.7" />
              )}
              <text
                class="s b halo"
                x={52 * w + 4 * (w < 0 ? -1 : 1)}
                y="-38.8"
                text-anchor={w < 0 ? 'end' : 'start'}
              >{`her ${side}`}</text>
            </g>
          );
        })}
    </svg>
  );
}

export default function FlippedSelfie(settings: ProblemSettings) {
  return <Problem skill={flippedSelfie} Picture={SelfieFrame} {...settings} />;
}
