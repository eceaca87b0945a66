import { boneOverEdgeMm } from '#lib/mapping/under/offBone.ts';
import type { Stretches } from '#lib/mapping/under/stretch.ts';
import type { UnderOutline } from '#lib/mapping/under/underOutline.ts';
import { type HairAndBoneState, plannedLeft } from '#calculators/hairAndBone.ts';
import { underScale, underX } from './underView.ts';

/**
 * One brow, drawn at build: its outline, each hair with its root and how far along its tip lies, and the
 * height of the lower edge at 21 places from front to tail.
 */
export type UnderBrow = Readonly<{
  outline: string;
  hairs: readonly (readonly [alongMm: number, downMm: number, tipMm: number, path: string])[];
  lowerEdgeMm: readonly number[];
}>;

type Props = Readonly<{ id: string; brow: UnderBrow; state: HairAndBoneState; under: UnderOutline }>;

const hairRow = -14;
const boneRow = -6;
const cowlickReachMm = 4;
const lines = (parts: Stretches, y: number) =>
  parts.map(({ fromMm, toMm }) => `M${underX(fromMm).toFixed(1)} ${y}H${underX(toMm).toFixed(1)}`).join('');
/** In the thin part two hairs of three are gone. */
const isLeft = (index: number, tipMm: number, thinFromMm: number) => tipMm < thinFromMm || index % 3 === 0;

/** The edge of the bone as a path, from its height over the lower edge. */
function bonePath({ lowerEdgeMm }: UnderBrow, { boneArch, boneTail }: HairAndBoneState): string {
  return lowerEdgeMm
    .map((edgeMm, i) => {
      const placeMm = (plannedLeft.lengthMm * i) / (lowerEdgeMm.length - 1);
      const upMm =
        edgeMm + boneOverEdgeMm({ ...plannedLeft, atArchMm: boneArch, atTailMm: boneTail }, placeMm);
      return `${i === 0 ? 'M' : 'L'}${placeMm.toFixed(2)} ${(-upMm).toFixed(2)}`;
    })
    .join('');
}

/** Hair, outline and bone of one brow; below it what lies under each millimetre. */
export function UnderOverlay({ id, brow, state, under }: Props) {
  const { hairFrom, hairTo, thinFrom, cowlick, cowlickAt } = state;
  const turn = (alongMm: number) =>
    cowlick === 'turned' ? -60 * Math.max(0, 1 - ((alongMm - cowlickAt) / cowlickReachMm) ** 2) : 0;
  const shown = brow.hairs.filter(
    ([alongMm, , tipMm], i) => alongMm >= hairFrom && tipMm <= hairTo && isLeft(i, tipMm, thinFrom),
  );
  const [first] = under.nothing;
  return (
    <g>
      <defs>
        <clipPath id={`${id}-clip`}>
          <path d={brow.outline} />
        </clipPath>
      </defs>
      <g transform={`translate(${underX(0)} 0) scale(${underScale})`}>
        {under.nothing.map(({ fromMm, toMm }) => (
          <path
            key={fromMm}
            class="under-nothing"
            clip-path={`url(#${id}-clip)`}
            d={Array.from({ length: Math.ceil((toMm - fromMm + 14) / 0.9) }, (_, i) => fromMm - 14 + i * 0.9)
              .map(
                (x) =>
                  `M${Math.max(x, fromMm).toFixed(1)} ${(-10 - Math.max(0, fromMm - x)).toFixed(1)}L${Math.min(x + 14, toMm).toFixed(1)} ${(-10 - Math.min(14, toMm - x)).toFixed(1)}`,
              )
              .join('')}
          />
        ))}
        {shown.map(([alongMm, downMm, , d]) => {
          const deg = turn(alongMm);
          return (
            <path
              key={d}
              class="under-hair"
              d={d}
              {...(deg !== 0 && { transform: `rotate(${deg.toFixed(0)} ${alongMm} ${downMm})` })}
            />
          );
        })}
        <path class="under-bone" d={bonePath(brow, state)} />
        <path class="under-outline" d={brow.outline} />
      </g>
      <text class="halo" x="1" y={hairRow + 1.3}>
        hair
      </text>
      <path class="under-bare" d={lines([{ fromMm: 0, toMm: under.lengthMm }], hairRow)} />
      <path
        class="under-full"
        d={lines(
          under.hair.flatMap(({ fromMm, toMm }) =>
            thinFrom > fromMm ? [{ fromMm, toMm: Math.min(toMm, thinFrom) }] : [],
          ),
          hairRow,
        )}
      />
      <path class="under-thin" d={lines(under.thin, hairRow)} />
      <text class="halo" x="1" y={boneRow + 1.3}>
        bone
      </text>
      <path class="under-full" d={lines([{ fromMm: 0, toMm: under.lengthMm }], boneRow)} />
      <path class="under-gap" d={lines(under.offBone, boneRow)} />
      <path class="under-bare" d={lines(under.offBone, boneRow)} />
      {[hairFrom, hairTo, thinFrom].map((mm, i) => (
        <circle key={i} class="under-dot" cx={underX(mm)} cy={hairRow} r="1.9" />
      ))}
      <path
        class="d-mark"
        d={`M${underX(0)} 1H${underX(under.lengthMm)}${Array.from({ length: 9 }, (_, i) => `M${underX(i * 5)} 1v${i % 2 === 0 ? 3 : 1.8}`).join('')}`}
      />
      {[0, 10, 20, 30, 40].map((mm) => (
        <text key={mm} x={underX(mm)} y="9.5" text-anchor="middle">
          {mm}
        </text>
      ))}
      {first && (
        <text
          class="halo under-word"
          x={Math.min(128, underX((first.fromMm + first.toMm) / 2) + 14)}
          y="-58"
          text-anchor="end"
        >
          nothing under it
        </text>
      )}
    </g>
  );
}
