import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import type { Face } from '#lib/face/face.ts';
import { closedSpline } from './curve.ts';
import { hatchPath } from './hatch.ts';
import type { HeadOutline } from './headOutline.ts';
import { closedPath, dotPath, type Path } from './path.ts';
import { filled, stroked, type Layers } from './shape.ts';
import type { Spot } from '#lib/face/spot.ts';

/** Pale patches and freckles: they lie under every feature. */
export function skinMarkLayers(face: Face, outline: HeadOutline, seed: number): Layers {
  return [...patches(face, outline, seed), ...freckles(face, seed)];
}

/** A patch has a scalloped, rounded edge. Unfilled skin shows it by its edge and a few pale hatch lines. */
function patches({ form: { vitiligo = [] } }: Face, outline: HeadOutline, seed: number): Layers {
  const head = closedPath(outline.whole);
  return vitiligo.flatMap(({ at, radiusMm }, i) => {
    const draw = drawFrom(seedFrom('patch', i, seed));
    const phase = 2 * Math.PI * draw();
    const edge = Array.from({ length: 18 }, (_, k): Spot => {
      const angle = (k / 18) * 2 * Math.PI;
      const r = radiusMm * (1 + 0.13 * Math.sin(2 * angle + phase) + 0.09 * Math.sin(5 * angle + 2 * phase));
      return [at[0] + 1.12 * r * Math.cos(angle), at[1] + r * Math.sin(angle)];
    });
    const path = closedPath(closedSpline(edge));
    const hatch = hatchPath(edge, { angleRad: -0.8, gapMm: 2.6, softMm: -1.6 }, draw);
    return [
      { ...filled('skinMark', 'pale', path), clip: head },
      { ...stroked('skinMark', 'soft', path, 0.22), clip: head },
      { ...stroked('skinMark', 'soft', hatch, 0.12), clip: head },
    ];
  });
}

function freckles({ form: { freckles: count } }: Face, seed: number): Layers {
  if (count === 0) return [];
  const draw = drawFrom(seedFrom('freckles', seed));
  const path = Array.from({ length: count }, (): Path => {
    const x = (draw() + draw() - 1) * 46;
    const v = -30 + 22 * draw() + 0.004 * x * x;
    const radius = 0.18 + 0.36 * draw();
    return Math.abs(x) > 5 || draw() < 0.4 ? dotPath([x, v], radius) : [];
  }).flat();
  return [{ ...filled('skinMark', 'soft', path), opacity: 0.85 }];
}
