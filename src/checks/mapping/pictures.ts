import { turnedSolid } from '#lib/geometry/solid.ts';
import { pictureOf } from '#lib/mapping/pose/pinhole.ts';
import type { Check } from '../check.ts';

/**
 * A height seen through a hole: the screen stands where our picture's scale is true, the object behind it.
 */
function onScreenMm(heightMm: number, awayMm: number, screenMm: number): number {
  return pictureOf({ xMm: 0, yMm: heightMm, zMm: screenMm - awayMm }, { xMm: 0, yMm: 0, zMm: 0 }, screenMm)
    .yMm;
}

const exact = 'exact to the printed digits';

/** The camera and the turn behind "Pose", against sums printed elsewhere. */
export const pictureChecks = [
  {
    id: 'pinhole-cup',
    kind: 'table',
    source: 'pinhole-cup',
    where: 'solution, last line',
    what: 'picture of a cup of 12 cm, 2 m before a hole, on a wall 30 cm behind it',
    printed: 18,
    unit: 'mm',
    tolerance: 0.01,
    because: exact,
    ours: (factor = 1) => onScreenMm(factor * 120, 2000, 300),
  },
  {
    id: 'pinhole-man',
    kind: 'table',
    source: 'pinhole-man',
    where: 'answer (a)',
    what: 'picture of a man of 1.8 m, 3 m before a hole, on a screen 0.3 m behind it',
    printed: 180,
    unit: 'mm',
    tolerance: 0.1,
    because: exact,
    ours: (factor = 1) => onScreenMm(1800, 3000, factor * 300),
  },
  {
    id: 'pinhole-structure',
    kind: 'table',
    source: 'pinhole-structure',
    where: 'answer',
    what: 'picture of a building of 10 m seen from 20 m, screen 17 mm behind the hole',
    printed: 8.5,
    unit: 'mm',
    tolerance: 0.005,
    because: exact,
    ours: (factor = 1) => onScreenMm(10_000, factor * 20_000, 17),
  },
  {
    id: 'rotation-across',
    kind: 'table',
    source: 'rotation-60',
    where: 'answer: x, half of 1 + 3√3',
    what: 'a point (1, 2, 3) turned by 60° about the upright axis: across',
    printed: 3.098,
    unit: '1',
    tolerance: 0.001,
    because: 'the printed root, to three decimals',
    ours: (factor = 1) => turnedSolid({ xMm: factor, yMm: 2, zMm: factor * 3 }, 60).xMm,
  },
  {
    id: 'rotation-ahead',
    kind: 'table',
    source: 'rotation-60',
    where: 'answer: z, half of 3 − √3',
    what: 'the same point: towards the camera',
    printed: 0.634,
    unit: '1',
    tolerance: 0.001,
    because: 'the printed root, to three decimals',
    ours: (factor = 1) => turnedSolid({ xMm: 1, yMm: 2, zMm: 3 }, factor * 60).zMm,
  },
] as const satisfies readonly Check[];
