import type { Draw } from '#lib/quantities/seed.ts';
import { closedSpline } from '../curve.ts';
import { hatchPath } from '../hatch.ts';
import { closedPath, polygonPath } from '../path.ts';
import { filled, stroked, type Layers } from '../shape.ts';
import { distance, onSide, spotAfter, type Spot, type Spots } from '#lib/face/spot.ts';

/**
 * Nested areas of old colour: how far each passes the outline, and how strong it is. The edge of old pigment
 * is blurred.
 */
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

/**
 * Old work left in the skin, from its corners on its own side: soft areas of colour, a thin line round them
 * and a hatch at 45° that survives printing.
 */
export function oldWorkLayers(corners: Spots, outward: 1 | -1, isMeasured: boolean, draw: Draw): Layers {
  const areas = isMeasured ? measured : faint;
  const drawn = onSide(outward, corners);
  const hatch = hatchPath(drawn, { angleRad: (outward * Math.PI) / 4, gapMm: 1.15, softMm: 0.8 }, draw);
  return [
    ...areas.map(({ grownMm, opacity }) => {
      const area = closedPath(closedSpline(onSide(outward, grown(corners, grownMm, draw))));
      return { ...filled('oldWork', 'old', area), opacity };
    }),
    { ...stroked('oldWork', 'old', hatch, 0.22), opacity: 0.9 },
    // Straight from corner to corner: what is covered is reckoned from these.
    stroked('oldWork', 'old', polygonPath(drawn), 0.25),
  ];
}

/** The corners pushed outwards, a little unevenly. */
function grown(corners: Spots, byMm: number, draw: Draw): Spots {
  const hand = isAgainstTheClock(corners) ? 1 : -1;
  return corners.map(([u, v], i): Spot => {
    const before = spotAfter(corners, i + corners.length - 2);
    const after = spotAfter(corners, i);
    const length = distance(before, after) || 1;
    const push = hand * (byMm + 0.3 * (draw() - 0.5));
    return [u + ((after[1] - before[1]) / length) * push, v - ((after[0] - before[0]) / length) * push];
  });
}

function isAgainstTheClock(corners: Spots): boolean {
  return (
    corners.reduce((twiceArea, [u, v], i) => {
      const [nextU, nextV] = spotAfter(corners, i);
      return twiceArea + u * nextV - nextU * v;
    }, 0) > 0
  );
}
