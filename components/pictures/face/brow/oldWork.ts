import type { Draw } from '#lib/quantities/seed.ts';
import type { BrowSpots } from '#lib/face/landmarks.ts';
import { closedSpline } from '../curve.ts';
import { hatchPath } from '../hatch.ts';
import { closedPath, mapPath } from '../path.ts';
import { filled, stroked, type Layers } from '../shape.ts';
import { distance, onSide, spotAfter, type Spot, type Spots } from '#lib/face/spot.ts';
import { browOutline, browPolygon } from './browEdges.ts';

/** Nested areas of old colour: how far each passes the outline, and how strong it is. The edge of old pigment is blurred. */
const faint = [
  { grownMm: 0.8, opacity: 0.1 },
  { grownMm: 0.1, opacity: 0.12 },
  { grownMm: -0.7, opacity: 0.14 },
] as const;
/** A measured colour stands as measured in the middle (97 of 100 parts) and fades over the same edge. */
const measured = [
  { grownMm: 0.8, opacity: 0.4 },
  { grownMm: 0.1, opacity: 0.6 },
  { grownMm: -0.7, opacity: 0.88 },
] as const;

/** Old work left in the skin: soft areas of colour, a thin line round them and a hatch at 45° that survives printing. */
export function oldWorkLayers(brow: BrowSpots, outward: 1 | -1, isMeasured: boolean, draw: Draw): Layers {
  const polygon = browPolygon(brow);
  const areas = isMeasured ? measured : faint;
  const hatch = hatchPath(onSide(outward, polygon), { angleRad: (outward * Math.PI) / 4, gapMm: 1.15, softMm: 1.5 }, draw);
  return [
    ...areas.map(({ grownMm, opacity }) => {
      const area = closedPath(closedSpline(onSide(outward, grown(polygon, grownMm, draw))));
      return { ...filled('oldWork', 'old', area), opacity };
    }),
    { ...stroked('oldWork', 'old', hatch, 0.22), opacity: 0.9 },
    stroked('oldWork', 'old', mapPath(browOutline(brow), ([u, v]) => [outward * u, v]), 0.25),
  ];
}

/** The polygon pushed outwards, unevenly, every fourth corner kept. */
function grown(polygon: Spots, byMm: number, draw: Draw): Spots {
  const corners = polygon.filter((_, i) => i % 4 === 0);
  return corners.map(([u, v], i): Spot => {
    const before = spotAfter(corners, i + corners.length - 2);
    const after = spotAfter(corners, i);
    const length = distance(before, after) || 1;
    const push = byMm + 0.35 * Math.sin(i * 2.1) + 0.2 * (draw() - 0.5);
    return [u - ((after[1] - before[1]) / length) * push, v + ((after[0] - before[0]) / length) * push];
  });
}
