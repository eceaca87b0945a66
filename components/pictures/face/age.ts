import type { Draw } from '#lib/quantities/seed.ts';
import type { Face } from '#lib/face/face.ts';
import type { HeadOutline } from './headOutline.ts';
import { mouthMiddle } from './mouth.ts';
import { drawnLine, drawnTwice, type Layers } from './shape.ts';
import { blend, onSide, type Spot, type Spots } from '#lib/face/spot.ts';

/**
 * Lines from nose to mouth, below the mouth corners, on the forehead and along the jaw, stronger with age (0
 * to 1).
 */
export function ageLayers(face: Face, outline: HeadOutline, draw: Draw): Layers {
  const { age, mouthWidthMm, jawV } = face.form;
  if (age <= 0.2) return [];
  const [mouthX, mouthV] = mouthMiddle(face);
  const w = mouthWidthMm / 2;
  const { right, left } = face.landmarks;
  /**
   * From the wing to beside the mouth's own corner, bowed outwards: it follows a mouth or a nose that stands
   * off the middle.
   */
  const fold = (hand: 1 | -1, wing: Spot): Spots => {
    const from: Spot = [wing[0] + 1.5, wing[1] + 1];
    const to: Spot = [Math.max(hand * mouthX + w + 6.5, wing[0] + 3), mouthV + 2];
    return [
      from,
      ...[0.34, 0.7].map((t): Spot => [blend(from[0], to[0], t) + 2.4, blend(from[1], to[1], t)]),
      to,
    ];
  };
  const corners = drawnTwice(
    'age',
    'soft',
    [
      [w + 2.4, mouthV - 4],
      [w + 2.6, mouthV - 10],
      [w + 0.4, mouthV - 17],
    ],
    [0.05, 0.6 * age, 0.05],
  );
  const frown = drawnTwice(
    'age',
    'soft',
    [
      [3.4, 20],
      [3, 14],
      [4.2, 9],
    ],
    [0.05, 0.6 * age, 0.05],
  );
  const jowlV = jawV - 10;
  const edge = outline.halfWidthAt(jowlV);
  const jowl = drawnTwice(
    'age',
    'soft',
    [
      [edge - 5, jowlV + 6],
      [edge - 10, jowlV - 1],
      [edge - 19, jowlV - 6],
    ],
    [0.05, 0.5, 0.05],
  );
  return [
    drawnLine('age', 'soft', onSide(-1, fold(-1, right.noseWing)), [0.05, 0.3 + 0.55 * age, 0.05]),
    drawnLine('age', 'soft', fold(1, left.noseWing), [0.05, 0.3 + 0.55 * age, 0.05]),
    ...(age > 0.45 ? [...corners.map((layer) => layer), ...frown] : []),
    ...foreheadLines(age, draw),
    ...(age > 0.6 ? jowl : []),
    ...(age > 0.75 ? lipLines(mouthX, mouthV + face.form.upperLipMm, draw) : []),
  ];
}

function foreheadLines(age: number, draw: Draw): Layers {
  return Array.from({ length: Math.round(age * 3) }, (_, k) => {
    const v = 33 + k * 8;
    const reach = 28 + 5 * draw();
    const spots: Spots = [
      [-reach, v - 2],
      [-14, v + 0.8 * draw()],
      [-2, v - 0.8 * draw()],
      [16, v + 1],
      [reach - 3 * draw(), v - 2.4],
    ];
    return drawnLine('age', 'soft', spots, [0.05, 0.45 * age, 0.05]);
  });
}

/** Short upright lines over the upper lip. */
function lipLines(mouthX: number, v: number, draw: Draw): Layers {
  return [-13, -8.5, 8, 12.5].map((x) =>
    drawnLine(
      'age',
      'soft',
      [
        [mouthX + x, v + 2.4 + draw()],
        [mouthX + x * 0.97, v + 0.6],
        [mouthX + x * 0.96, v - 1.4],
      ],
      [0.04, 0.3, 0.04],
    ),
  );
}
