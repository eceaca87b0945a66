import type { Face } from '#lib/face/face.ts';
import { reversed, spline, type Curve } from './curve.ts';
import { closedPath } from './path.ts';
import { drawnCurve, drawnLine, filled, type Layers } from './shape.ts';
import { blend, mirrored, type Spot, type Spots } from '#lib/face/spot.ts';

/**
 * The mouth takes a third of the chin's shift and a fifth of the nose's; the groove under the nose runs from
 * subnasale to it.
 */
export function mouthMiddle({ landmarks: { middle }, form }: Face): Spot {
  return [middle.chin[0] / 3 + middle.subnasale[0] / 5, form.mouthV];
}

export function mouthLayers(face: Face): Layers {
  const { upperLipMm: up, lowerLipMm: low, mouthWidthMm } = face.form;
  const [x0, v0] = mouthMiddle(face);
  const w = mouthWidthMm / 2;
  const at = (spots: Spots): Spots => spots.map(([x, v]): Spot => [x0 + x, v0 + v]);
  /** The right half mirrored onto the left, meeting in the last spot. */
  const across = (half: Spots): Curve => spline(at([...half, ...mirrored(half.slice(0, -1))]));
  const bow: Spots = [
    [w - 0.5, 0.5],
    [w * 0.6, up * 0.52],
    [w * 0.155, up],
    [0, up - 1.3],
  ];
  const seam: Spots = [
    [w, 0.4],
    [w * 0.6, -0.5],
    [w * 0.2, 0.5],
    [0, -0.6],
  ];
  const lower: Spots = [
    [w - 1.5, -0.6],
    [w * 0.66, -low * 0.62],
    [w * 0.3, -low * 0.97],
    [0, -low],
  ];
  return [
    { ...filled('mouth', 'lip', closedPath(across(bow), reversed(across(lower)))), opacity: 0.55 },
    drawnCurve('mouth', 'line', across(seam), [0.5, 0.9, 0.5]),
    drawnCurve('mouth', 'soft', across(bow), [0.15, 0.5, 0.15]),
    drawnLine(
      'mouth',
      'soft',
      at([
        [-w * 0.62, -low * 0.78],
        [-w * 0.2, -low - 0.1],
        [w * 0.25, -low - 0.1],
        [w * 0.66, -low * 0.74],
      ]),
      [0.1, 0.7, 0.1],
    ),
    drawnLine(
      'mouth',
      'soft',
      at([
        [-8, -low - 4.4],
        [0, -low - 5.3],
        [9, -low - 4.2],
      ]),
      [0.05, 0.6, 0.05],
    ),
    ...grooveLayers(face, x0, v0 + up),
  ];
}

function grooveLayers({ landmarks: { middle } }: Face, mouthX: number, lipV: number): Layers {
  const [noseX, noseV] = middle.subnasale;
  const ridge = (hand: 1 | -1): Spots =>
    [0, 0.5, 1].map((t): Spot => [
      blend(noseX, mouthX, t) + hand * blend(2.4, 3.5, t),
      blend(noseV - 2.6, lipV + 2, t),
    ]);
  return [
    drawnLine('mouth', 'soft', ridge(1), [0.05, 0.35, 0.05]),
    drawnLine('mouth', 'soft', ridge(-1), [0.05, 0.35, 0.05]),
  ];
}
