import { drawFrom, seedFrom, type Draw } from '#lib/quantities/seed.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { Face } from '#lib/face/face.ts';
import { defaultForm } from '#lib/face/form.ts';
import { mappingValues } from '#lib/mapping/numbers/values.ts';
import { outward } from '#lib/face/landmarks.ts';
import type { Detail } from './brow/brows.ts';
import { reversed, type Curve, type Piece } from './curve.ts';
import { circlePath, closedPath, type Path, type Step } from './path.ts';
import { drawnCurve, drawnLine, filled, stroked, type Layer, type Layers } from './shape.ts';
import { blend, type Spot, type Spots } from '#lib/face/spot.ts';

/** Half the mean visible iris width (Rüfer, Schröder & Erb 2005). */
export const irisRadiusMm = mappingValues['iris-width-mm'] / 2;

/** One eye's opening, on its own side (u outwards). */
export type EyeOpening = Readonly<{
  inner: Spot;
  outer: Spot;
  pupil: Spot;
  upperV: number;
  upper: Curve;
  lower: Curve;
}>;

export function eyeOpening({ landmarks, form }: Face, side: Side): EyeOpening {
  const { innerCorner: inner, outerCorner: outer, pupil } = landmarks[side];
  const { openingShare, peakShift } = side === 'left' ? form.leftEye : defaultForm.leftEye;
  const peakU = pupil[0] - 0.6 + (form.lidPeak + peakShift) * 1.8;
  const upperV = pupil[1] + 4.25 * form.eyeOpening * openingShare;
  const lowerV = pupil[1] - 5.2 - 0.3 * form.eyeRoundness;
  const full = 1 + 0.16 * form.eyeRoundness;
  const droop = form.lid === 'hooded' ? 0.8 : 0;
  const shoulder: Spot = [
    outer[0] - 4.8 * full,
    blend(outer[1], upperV, 0.86) - droop + 0.5 * form.eyeRoundness,
  ];
  const upper: Curve = [
    [inner, [inner[0] + 1.8, inner[1] + 2.4 * full], [peakU - 6.6 * full, upperV], [peakU, upperV]],
    [[peakU, upperV], [peakU + 6.6 * full, upperV], shoulder, outer],
  ];
  const lower: Curve = [
    [inner, [inner[0] + 3, inner[1] - 2.6 * full], [pupil[0] - 7 * full, lowerV], [pupil[0] + 1, lowerV]],
    [[pupil[0] + 1, lowerV], [pupil[0] + 6.8 * full, lowerV], [outer[0] - 3.4, outer[1] - 4.2 * full], outer],
  ];
  return { inner, outer, pupil, upperV, upper, lower };
}

export function eyeLayers(face: Face, side: Side, seed: number, detail: Detail): Layers {
  const eye = eyeOpening(face, side);
  const hand = outward(side);
  const put = ([u, v]: Spot): Spot => [hand * u, v];
  const putCurve = (curve: Curve): Curve =>
    curve.map(([a, b, c, d]): Piece => [put(a), put(b), put(c), put(d)]);
  const upper = putCurve(eye.upper);
  const lower = putCurve(eye.lower);
  const white = closedPath(upper, reversed(lower));
  const within = (layer: Layer): Layer => ({ ...layer, clip: white });
  const centre = put(eye.pupil);
  const { inner, outer } = eye;
  const corner: Spots = [
    [inner[0] + 2.4, inner[1] + 0.4],
    [inner[0] + 3.3, inner[1] - 0.7],
    [inner[0] + 2.7, inner[1] - 1.6],
  ];
  const wing: Piece = [
    outer,
    [outer[0] + 0.7, outer[1] - 0.2],
    [outer[0] + 1.2, outer[1] - 0.6],
    [outer[0] + 1.7, outer[1] - 1],
  ];
  return [
    filled('eye', 'white', white),
    within({
      ...filled('eye', 'iris', circlePath(centre, irisRadiusMm)),
      opacity: Math.round(40 + 55 * face.form.irisTone) / 100,
    }),
    ...(detail !== 'far'
      ? [
          within({
            ...stroked('eye', 'pupil', irisRays(centre, drawFrom(seedFrom('iris', side, seed))), 0.16),
            opacity: 0.5,
          }),
        ]
      : []),
    within(stroked('eye', 'lash', circlePath(centre, irisRadiusMm - 0.2), 0.45)),
    within(filled('eye', 'pupil', circlePath(centre, 2.1))),
    // The lid's own shadow: without it eyes stare.
    within({ ...filled('eye', 'pupil', closedPath(upper, reversed(lowered(upper, 1.4)))), opacity: 0.28 }),
    // Light comes from the client's right in both eyes.
    within(filled('eye', 'glint', circlePath([centre[0] - 1.6, centre[1] + 1.9], 0.75))),
    drawnLine('eye', 'lash', corner.map(put), [0.1, 0.4, 0.1]),
    drawnCurve('eye', 'lash', [...upper, ...putCurve([wing])], [0.35, 1.35, 0.35]),
    drawnCurve('eye', 'lash', lower, [0.4, 0.3, 0.55]),
  ];
}

function lowered(curve: Curve, byMm: number): Curve {
  const down = ([x, y]: Spot): Spot => [x, y - byMm];
  return curve.map(([a, b, c, d]): Piece => [down(a), down(b), down(c), down(d)]);
}

const rays = 18;

function irisRays([x, y]: Spot, draw: Draw): Path {
  return Array.from({ length: rays }, (_, i): Step[] => {
    const angle = (i / rays) * 2 * Math.PI + 0.1 * draw();
    const from = 3 + 0.9 * draw();
    return [
      ['M', [x + from * Math.cos(angle), y + from * Math.sin(angle)]],
      ['L', [x + 5.4 * Math.cos(angle), y + 5.4 * Math.sin(angle)]],
    ];
  }).flat();
}
