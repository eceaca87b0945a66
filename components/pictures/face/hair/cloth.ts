import { closedSpline, onCurve, reversed, spline, type Curve } from '../curve.ts';
import type { HeadOutline } from '../headOutline.ts';
import { closedPath } from '../path.ts';
import { drawnCurve, drawnLine, filled, stroked, type Layer, type Layers } from '../shape.ts';
import { blend, mirrored, type Spot, type Spots } from '#lib/face/spot.ts';
import type { HairHead } from './hairHead.ts';

function fold(spots: Spots, widthMm = 0.7): Layer {
  return drawnLine('hair', 'fold', spots, [0.06, widthMm, 0.06]);
}

/** A scarf round face and neck. Its opening follows the jaw, so that no skin shows between chin and cloth. */
export function scarf({ skull: k, cheek: c, chinV }: HairHead, outline: HeadOutline): Layers {
  const jaw = [0.32, 0.55, 0.73, 0.86, 0.95].map((share): Spot => [
    outline.halfWidthAt(share * chinV) - 2.4,
    share * chinV + 1.2,
  ]);
  const half: Spots = [[30, 66], [52, 50], [c - 4, 18], [c - 2.6, -10], ...jaw];
  const opening = closedSpline([[0, 70], ...half, [0, chinV + 2.4], ...mirrored(half)]);
  const outer = spline([
    [-112, -172],
    [-84, -104],
    [-k - 6, -60],
    [-k - 9, 10],
    [-k - 6, 62],
    [-44, 110],
    [0, 121],
    [44, 110],
    [k + 6, 62],
    [k + 9, 10],
    [k + 6, -60],
    [84, -104],
    [112, -172],
  ]);
  return [
    filled('hair', 'cloth', [...closedPath(outer), ...closedPath(opening)]),
    drawnCurve('hair', 'fold', outer, [0.6, 1.1, 0.6]),
    drawnCurve('hair', 'fold', opening, [0.9, 0.9, 0.9]),
    fold([
      [-52, 60],
      [-40, 78],
      [-14, 92],
      [20, 98],
    ]),
    fold([
      [-60, 40],
      [-66, 62],
      [-46, 88],
      [-20, 103],
    ]),
    fold([
      [44, 64],
      [58, 60],
      [68, 40],
      [72, 8],
    ]),
    fold([
      [c + 2, 20],
      [c + 7, -16],
      [c, -56],
      [44, -108],
    ]),
    fold([
      [k + 2, -10],
      [k - 2, -58],
      [56, -112],
      [20, chinV - 17],
    ]),
    fold([
      [-c - 3, -26],
      [-c + 4, -66],
      [-40, -112],
      [-10, chinV - 11],
      [30, chinV - 13],
    ]),
    fold([
      [-k - 3, -50],
      [-64, -100],
      [-30, chinV - 17],
      [14, chinV - 24],
    ]),
    fold([
      [-84, -112],
      [-60, -130],
      [-34, -140],
    ]),
    fold(
      [
        [64, -98],
        [72, -120],
        [88, -136],
      ],
      0.5,
    ),
  ];
}

/** A wrap tied over the brow line with a knot on the client's left; the ears stay free. */
export function wrap({ skull: k, cheek: c, hairlineV }: HairHead): Layers {
  const h = hairlineV - 12;
  const line = spline([
    [-k + 2, 10],
    [-c + 3, 27],
    [-c + 12, 42],
    [-32, h],
    [0, h + 4],
    [32, h],
    [c - 12, 42],
    [c - 3, 27],
    [k - 2, 10],
  ]);
  const outer = spline([
    [-k + 2, 10],
    [-k - 6, 34],
    [-k - 7, 62],
    [-64, 102],
    [-24, 127],
    [20, 129],
    [64, 104],
    [k + 7, 62],
    [k + 6, 34],
    [k - 2, 10],
  ]);
  const knot = closedPath(
    closedSpline([
      [24, 84],
      [32, 79],
      [43, 86],
      [42, 99],
      [32, 104],
      [24, 97],
    ]),
  );
  return [
    filled('hair', 'cloth', closedPath(outer, reversed(line))),
    drawnCurve('hair', 'fold', outer, [0.3, 1.1, 0.3]),
    drawnCurve('hair', 'fold', line, [0.2, 1, 0.2]),
    ...[0, 1, 2, 3, 4, 5].map((i) => towardsKnot(outer, 0.08 + i * 0.055, [27, 85 + i * 3], 7 - i)),
    ...[0, 1, 2, 3].map((i) => towardsKnot(outer, 0.95 - i * 0.07, [41, 87 + i * 4], 3)),
    filled('hair', 'cloth', knot),
    stroked('hair', 'fold', knot, 0.8),
    drawnLine(
      'hair',
      'fold',
      [
        [28, 86],
        [34, 91],
        [38, 100],
      ],
      [0.1, 0.6, 0.1],
    ),
  ];
}

function towardsKnot(outer: Curve, t: number, end: Spot, liftMm: number): Layer {
  const from = onCurve(outer, t);
  return drawnLine(
    'hair',
    'fold',
    [from, [blend(from[0], end[0], 0.5), blend(from[1], end[1], 0.5) + liftMm], end],
    [0.06, 0.8, 0.2],
  );
}
