import type { Draw } from '#lib/quantities/seed.ts';
import type { Face } from '#lib/face/face.ts';
import type { HeadOutline } from './headOutline.ts';
import { mouthMiddle } from './mouth.ts';
import type { Step } from './path.ts';
import { stroked, type Layers } from './shape.ts';
import { blend, clamp } from '#lib/face/spot.ts';

/**
 * Beard and moustache from 0 (none) to 1 (full). Hair points down and outwards, under the chin down; the
 * mouth stays free.
 */
export function beardLayers(face: Face, outline: HeadOutline, draw: Draw): Layers {
  const { beard } = face.form;
  if (beard <= 0) return [];
  const [mouthX, mouthV] = mouthMiddle(face);
  const chinV = face.landmarks.middle.chin[1];
  const wanted = Math.round(540 * beard);
  const steps: Step[] = [];
  for (let tries = 0; tries < wanted * 12 && steps.length < wanted * 2; tries++) {
    const x = (2 * draw() - 1) * face.form.cheekMm;
    const v = blend(-22, chinV + 1, draw());
    const across = x - mouthX;
    if (!grows(face, outline, Math.abs(across), v, mouthV)) continue;
    const length = (1.9 + 1.9 * beard) * (0.8 + 0.4 * draw());
    const moustache = v > mouthV && Math.abs(across) < 28;
    const sway = moustache ? Math.sign(across) * 0.75 : across / 75;
    steps.push(
      ['M', [x, v]],
      ['L', [x + length * (sway + 0.25 * (draw() - 0.5)), v - length * (moustache ? 0.65 : 0.95)]],
    );
  }
  return [stroked('beard', 'soft', steps, 0.4)];
}

function grows({ form }: Face, outline: HeadOutline, across: number, v: number, mouthV: number): boolean {
  const half = form.mouthWidthMm / 2;
  const cheekLine =
    across > 29
      ? blend(mouthV + 4, -20, clamp((across - 29) / (form.cheekMm - 33), 0, 1) ** 1.6)
      : mouthV + 15 - 0.16 * across;
  const nearLips =
    across < half + 1.5 &&
    v < mouthV + form.upperLipMm + 2.4 - across * 0.15 &&
    v > mouthV - form.lowerLipMm - 2.2 + across * 0.25;
  const bareCorner = across > half + 5 && across < 30 && v > mouthV - 5;
  const bareChin = across > 7 && across < half - 4 && v > mouthV - form.lowerLipMm - 8 && v < mouthV;
  const bareGroove = across < 2.6 && v > mouthV;
  return (
    across < outline.halfWidthAt(v) - 1.2 &&
    v < cheekLine &&
    !nearLips &&
    !bareCorner &&
    !bareChin &&
    !bareGroove
  );
}
