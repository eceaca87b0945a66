import type { Face } from '#lib/face/face.ts';
import { closedSpline } from './curve.ts';
import { closedPath } from './path.ts';
import { drawnLine, drawnTwice, stroked, type Layers } from './shape.ts';
import { onSide, type Spots } from '#lib/face/spot.ts';

export function glassesLayers({ form, landmarks }: Face): Layers {
  if (!form.glasses) return [];
  const centre = (landmarks.right.pupil[0] + landmarks.left.pupil[0]) / 2;
  const rim: Spots = [
    [-23, 1],
    [-16, 9.5],
    [2, 11],
    [20, 8],
    [24, -1],
    [18, -16],
    [2, -20],
    [-15, -17],
  ].map(([u = 0, v = 0]) => [u + centre + 1, v] as const);
  return [
    stroked('glasses', 'line', closedPath(closedSpline(onSide(-1, rim))), 1.1),
    stroked('glasses', 'line', closedPath(closedSpline(onSide(1, rim))), 1.1),
    drawnLine(
      'glasses',
      'line',
      [
        [-centre + 22, 2],
        [0, 4.6],
        [centre - 22, 2],
      ],
      [1, 1, 1],
    ),
    ...drawnTwice(
      'glasses',
      'line',
      [
        [centre + 24.5, 3],
        [form.cheekMm - 1, 4.6],
      ],
      [1, 1, 1],
    ),
  ];
}
