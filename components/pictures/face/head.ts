import type { Draw } from '#lib/quantities/seed.ts';
import type { Face } from '#lib/face/face.ts';
import { closedSpline, spline } from './curve.ts';
import { hatchPath } from './hatch.ts';
import type { HeadOutline } from './headOutline.ts';
import { closedPath } from './path.ts';
import { drawnCurve, drawnLine, drawnTwice, filled, stroked, type Layers } from './shape.ts';
import { blend, clamp, mirrored, onSide, type Spots } from '#lib/face/spot.ts';

/** Skin and contour of the head; hair hides the crown, so only a bare or cropped head shows it. */
export function headLayers({ form }: Face, outline: HeadOutline, hairIsDrawn: boolean): Layers {
  const seesCrown = form.hair === 'bald' || form.hair === 'crop';
  const contour = !hairIsDrawn
    ? drawnCurve('head', 'line', outline.longFaceLine, [0.2, 1.3, 0.2])
    : drawnCurve('head', 'line', seesCrown ? outline.whole : outline.faceLine, [0.8, 1.25, 0.8]);
  return [
    filled('head', 'skin', closedPath(outline.whole)),
    contour,
    ...(hairIsDrawn && form.hair === 'bald'
      ? [
          drawnLine(
            'head',
            'soft',
            [
              [-34, 99],
              [-14, 106],
              [10, 107],
            ],
            [0.1, 0.6, 0.1],
          ),
        ]
      : []),
  ];
}

export function neckLayers({ form, landmarks }: Face, draw: Draw): Layers {
  const chinV = landmarks.middle.chin[1];
  const half = blend(46, 53, clamp((form.jawMm - 48) / 12, 0, 1));
  const side: Spots = [
    [half - 2, -82],
    [half - 3, -112],
    [half + 3, -128],
    [half + 22, -140],
    [half + 50, -152],
    [half + 56, -170],
  ];
  const skin = filled(
    'neck',
    'skin',
    closedPath(spline([...onSide(-1, side), ...mirrored(onSide(-1, side))])),
  );
  if (form.hair === 'scarf') return [skin];
  const shade: Spots = [
    [-10, chinV - 0.5],
    [20, chinV + 2],
    [half - 7, blend(form.jawV, chinV, 0.66)],
    [half - 4, Math.min(-100, chinV + 10)],
    [26, chinV - 7],
    [-6, chinV - 8],
  ];
  return [
    skin,
    ...drawnTwice('neck', 'line', side.slice(0, 4), [0.9, 0.8, 0.2]),
    ...drawnTwice(
      'neck',
      'soft',
      [
        [15, -139],
        [11, -134],
        [7, -138],
      ],
      [0.1, 0.6, 0.1],
    ),
    ...drawnTwice(
      'neck',
      'soft',
      [
        [33, -122],
        [25, -130],
        [16, -137],
      ],
      [0.1, 0.5, 0.1],
    ),
    stroked('neck', 'soft', hatchPath(shade, { angleRad: 0.6, gapMm: 2, softMm: 2.5 }, draw), 0.3),
  ];
}

/** Both ears, level with brow and nose base. */
export function earLayers({ form }: Face, { templeMm: e }: HeadOutline): Layers {
  const rim: Spots = [
    [e - 1, 9],
    [e + 5, 13.5],
    [e + 9.6, 8.5],
    [e + 9.2, -6],
    [e + 5.6, -22],
    [e + 3.6, -33],
    [e - 0.5, -36.5],
    [form.cheekMm - 3, -29],
  ];
  const fold: Spots = [
    [e + 1.5, 3],
    [e + 4.6, 8.6],
    [e + 7, 4],
    [e + 6.2, -8],
    [e + 3.6, -19],
  ];
  const inner: Spots = [
    [e + 1.6, -3],
    [e + 3.8, -8],
    [e + 3.2, -15],
    [e + 0.8, -18],
  ];
  return [1 as const, -1 as const].flatMap((hand) => [
    filled('ear', 'skin', closedPath(closedSpline(onSide(hand, rim)))),
    drawnLine('ear', 'line', onSide(hand, rim), [0.5, 1, 0.4]),
    drawnLine('ear', 'soft', onSide(hand, fold), [0.1, 0.6, 0.1]),
    drawnLine('ear', 'soft', onSide(hand, inner), [0.1, 0.7, 0.1]),
  ]);
}
