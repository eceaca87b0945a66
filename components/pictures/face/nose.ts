import type { Draw } from '#lib/quantities/seed.ts';
import type { Face } from '#lib/face/face.ts';
import { nasionV } from '#lib/face/bones.ts';
import { hatchPath } from './hatch.ts';
import { drawnLine, stroked, type Layers } from './shape.ts';
import { blend, clamp, type Spot, type Spots } from '#lib/face/spot.ts';

/**
 * Nose from nasion to subnasale. The bony root stays at the nasion, the wings carry the lean, the bridge runs
 * between.
 */
export function noseLayers(face: Face, draw: Draw, withBase: boolean): Layers {
  const { middle } = face.landmarks;
  const bridge = face.form.bridgeWidthMm / 2;
  const wingV = wingMiddle(face)[1];
  const length = (nasionV - wingV) / 44;
  /** A spot of the bridge: x from the nose's own axis, v for a nose of usual length. */
  const along = (spots: Spots): Spots =>
    spots.map(([x, v]): Spot => {
      const ownV = v > nasionV ? v : nasionV - (nasionV - v) * length;
      return [x + axisX(face, ownV), ownV];
    });
  // One long side and one short: light from the client's right.
  const sides: Layers = [
    drawnLine(
      'nose',
      'soft',
      along([
        [bridge + 2.6, 9],
        [bridge + 0.4, 2],
        [bridge - 0.9, -9],
        [bridge - 0.3, -20],
        [bridge + 1.4, -29],
      ]),
      [0.1, 0.65, 0.1],
    ),
    drawnLine(
      'nose',
      'soft',
      along([
        [-bridge - 1.8, 7],
        [-bridge - 0.1, 0],
        [-bridge + 0.8, -9],
      ]),
      [0.1, 0.4, 0.05],
    ),
    stroked(
      'nose',
      'soft',
      hatchPath(
        along([
          [bridge + 0.6, -6],
          [bridge + 3.2, -8],
          [bridge + 4.4, -26],
          [bridge + 1.6, -27],
        ]),
        { angleRad: 0.7, gapMm: 1.7, softMm: 1 },
        draw,
      ),
      0.24,
    ),
  ];
  if (!withBase) return sides;
  const tipV = middle.subnasale[1] + 2.2;
  const tip = (spots: Spots): Spots => spots.map(([x, v]): Spot => [x + middle.subnasale[0], v + tipV]);
  return [
    ...sides,
    ...wingLayers(face, 'right'),
    ...wingLayers(face, 'left'),
    drawnLine(
      'nose',
      'line',
      tip([
        [-4.4, 0],
        [-1.6, -2.1],
        [1.6, -2.1],
        [4.4, 0],
      ]),
      [0.15, 0.7, 0.15],
    ),
  ];
}

/** Wing and nostril of one side, hung on its mark. */
function wingLayers(face: Face, side: 'right' | 'left'): Layers {
  const hand = side === 'left' ? 1 : -1;
  const [wingU, wingV] = face.landmarks[side].noseWing;
  const [middleX] = wingMiddle(face);
  const half = Math.abs(hand * wingU - middleX);
  const put = (spots: Spots): Spots => spots.map(([u, v]): Spot => [middleX + hand * u, wingV + v]);
  const nostrilIn = Math.max(3.4, half - 10.8);
  const rise = blend(4.4, 7, clamp((half - 14.5) / 7, 0, 1));
  return [
    drawnLine(
      'nose',
      'line',
      put([
        [half - 3.4, rise + 0.8],
        [half - 0.9, rise - 1.6],
        [half, 0],
        [half - 1.2, -4],
        [half - 4, -5.4],
      ]),
      [0.2, 1, 0.35],
    ),
    drawnLine(
      'nose',
      'line',
      put([
        [half - 4.6, -5.1],
        [half - 7.4, -4],
        [nostrilIn, -6.4],
      ]),
      [0.3, 1.5, 0.2],
    ),
    drawnLine(
      'nose',
      'soft',
      put([
        [half - 8.6, 5],
        [half - 7.2, 1],
        [half - 8, -2.2],
      ]),
      [0.05, 0.4, 0.05],
    ),
  ];
}

function wingMiddle({ landmarks: { right, left } }: Face): Spot {
  return [(left.noseWing[0] - right.noseWing[0]) / 2, (left.noseWing[1] + right.noseWing[1]) / 2];
}

/** Where the nose's own axis stands at height v. */
export function axisX(face: Face, v: number): number {
  const { nasion } = face.landmarks.middle;
  const [baseX, baseV] = wingMiddle(face);
  return blend(nasion[0], baseX, clamp((nasion[1] - v) / (nasion[1] - baseV), 0, 1));
}
