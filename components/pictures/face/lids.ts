import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { Face } from '#lib/face/face.ts';
import { outward } from '#lib/face/landmarks.ts';
import { eyeOpening, type EyeOpening } from './eye.ts';
import { hatchPath } from './hatch.ts';
import type { Widths } from './penLine.ts';
import { drawnLine, stroked, type Layer, type Layers, type Role } from './shape.ts';
import { onSide, type Spots } from '#lib/face/spot.ts';

/** A line near an eye, on its own side. */
type LidLine = Readonly<{ spots: Spots; widths: Widths; role?: Role }>;

/**
 * Crease, fold or hood of the upper lid, the tear trough, the brow bone and the lines of age round one eye.
 */
export function lidLayers(face: Face, side: Side, seed: number): Layers {
  const eye = eyeOpening(face, side);
  const hand = outward(side);
  const draw = drawFrom(seedFrom('lid', side, seed));
  const lines = [...lidLines(face, eye), ...boneLines(face, eye), ...ageLines(face, eye, draw)];
  return [
    ...lines.map(({ spots, widths, role = 'line' }): Layer =>
      drawnLine('lid', role, onSide(hand, spots), widths),
    ),
    ...(face.form.lid === 'deep' ? [hollow(eye, hand, draw)] : []),
  ];
}

function lidLines(
  { form }: Face,
  { inner: i, outer: o, pupil: p, upperV: up }: EyeOpening,
): readonly LidLine[] {
  const c = p[0] + form.lidPeak;
  switch (form.lid) {
    case 'open':
      // On an eye whose pupil stands near the inner corner the crease begins further in, or it would stand up
      // like a hook.
      return [
        {
          spots: [
            [Math.min(i[0] + 3, c - 10), i[1] + 4.4],
            [c - 6, up + 2.9],
            [c + 1, up + 3.6],
            [o[0] - 6, o[1] + 5.2],
            [o[0] + 1.5, o[1] + 1.9],
          ],
          widths: [0.15, 0.6, 0.2],
        },
      ];
    case 'deep':
      return [
        {
          spots: [
            [i[0] + 0.5, i[1] + 5.6],
            [c - 7, up + 4.9],
            [c + 1, up + 5.4],
            [o[0] - 4, o[1] + 6],
            [o[0] + 3, o[1] + 1.2],
          ],
          widths: [0.3, 0.9, 0.2],
        },
      ];
    case 'hooded':
      return [
        {
          spots: [
            [i[0] + 3.5, i[1] + 4.1],
            [c - 5, up + 2.1],
            [c + 3, up + 1.9],
            [o[0] - 4, o[1] + 2.7],
            [o[0] + 3.8, o[1] - 1.4],
          ],
          widths: [0.2, 0.85, 0.35],
        },
        {
          spots: [
            [c + 2, up + 6.5],
            [o[0] - 4, o[1] + 7],
            [o[0] + 3.5, o[1] + 3],
          ],
          widths: [0.1, 0.4, 0.1],
          role: 'soft',
        },
      ];
    case 'single':
      return [
        {
          spots: [
            [i[0] + 3.6, i[1] + 2.4],
            [i[0] + 0.6, i[1] + 1.5],
            [i[0] - 0.9, i[1] - 0.5],
            [i[0] + 0.3, i[1] - 2.2],
          ],
          widths: [0.15, 0.65, 0.15],
        },
        {
          spots: [
            [c - 3, up + 7],
            [c + 5, up + 6.6],
            [o[0] - 2, o[1] + 5.4],
          ],
          widths: [0.1, 0.35, 0.1],
          role: 'soft',
        },
        {
          spots: [
            [c + 4, up + 0.9],
            [o[0] - 5, o[1] + 2.7],
            [o[0] + 1, o[1] + 0.9],
          ],
          widths: [0.1, 0.4, 0.1],
        },
      ];
  }
}

/** Tear trough, the shadow from the inner brow down the side of the nose, the rim under the tail. */
function boneLines({ form }: Face, { inner: i, outer: o, pupil: p }: EyeOpening): readonly LidLine[] {
  const bone = form.browBone;
  const bridge = form.bridgeWidthMm / 2;
  const trough: LidLine = {
    spots: [
      [i[0] + 1, i[1] - 4.2],
      [i[0] + 6, i[1] - 8.4],
      [p[0] - 2, p[1] - 11.6],
    ],
    widths: [0.08, 0.2 + 0.4 * form.age, 0.08],
    role: 'soft',
  };
  const shadow: LidLine = {
    spots: [
      [bridge + 2.8 + bone, 12],
      [bridge + 1.4, 6],
      [bridge, 0],
    ],
    widths: [0.1, 0.35 + 0.6 * bone, 0.1],
    role: 'soft',
  };
  const rim: LidLine = {
    spots: [
      [p[0] + 6, 11.6],
      [o[0] - 1, 10.6],
      [o[0] + 6, 6],
    ],
    widths: [0.1, 0.5 * bone, 0.1],
    role: 'soft',
  };
  return [trough, ...(bone > 0.15 ? [shadow] : []), ...(bone > 0.5 ? [rim] : [])];
}

function ageLines(
  { form: { age } }: Face,
  { inner: i, outer: o, pupil: p }: EyeOpening,
  draw: () => number,
): readonly LidLine[] {
  if (age <= 0.25) return [];
  const corner = Array.from({ length: Math.round(1 + 3 * age) }, (_, k): LidLine => ({
    spots: [
      [o[0] + 4, o[1] + 2.4 - k * 2.1],
      [o[0] + 7, o[1] + 2.9 - k * 2.9],
      [o[0] + 9 + 3 * age * draw(), o[1] + 3.6 - k * 4],
    ],
    widths: [0.05, 0.45 * age + 0.1, 0.05],
    role: 'soft',
  }));
  const bag: LidLine = {
    spots: [
      [i[0] + 4, i[1] - 8.5],
      [p[0] - 1, p[1] - 13.4],
      [p[0] + 8, p[1] - 11.8],
    ],
    widths: [0.05, 0.55 * age, 0.05],
    role: 'soft',
  };
  return [...corner, bag];
}

/** The hollow above a deep-set inner lid. */
function hollow({ inner: i, pupil: p, upperV: up }: EyeOpening, hand: 1 | -1, draw: () => number): Layer {
  const spots: Spots = [
    [i[0] - 1.5, 3],
    [i[0] + 1, 8],
    [p[0] - 5, up + 6],
    [p[0] - 8, up + 4.4],
    [i[0] + 1.5, 3.2],
  ];
  return stroked(
    'lid',
    'soft',
    hatchPath(onSide(hand, spots), { angleRad: hand * 0.9, gapMm: 1, softMm: 1 }, draw),
    0.22,
  );
}
