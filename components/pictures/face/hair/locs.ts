import type { Draw } from '#lib/quantities/seed.ts';
import { onCurve, reversed, spline } from '../curve.ts';
import { closedPath, type Step } from '../path.ts';
import { penLine } from '../penLine.ts';
import { drawnCurve, stroked, type Layers } from '../shape.ts';
import { blend, between, type Spot, type Spots } from '#lib/face/spot.ts';
import { hairline, mass, outerEdge, type HairHead } from './hairHead.ts';

export function locsBack({ skull, cheek }: HairHead, draw: Draw): Layers {
  const edge = spline([
    [-cheek + 8, -58],
    [-skull - 8, -50],
    [-skull - 9, 30],
    [-53, 105],
    [0, 119],
    [53, 105],
    [skull + 9, 30],
    [skull + 8, -50],
    [cheek - 8, -58],
  ]);
  const behind = ([-1, 1] as const).flatMap((hand) =>
    [-5, 0, 5].flatMap((out): Layers => {
      const u = cheek - 5 + out;
      return loc(
        [
          [hand * (u + 3), 10],
          [hand * (u + 2), -50],
          [hand * (u - 1), -98 - 10 * draw()],
        ],
        8,
        draw,
      );
    }),
  );
  return [mass(closedPath(edge)), ...behind];
}

/** Locs fall from a parting off the middle: the hindmost lie outermost and are drawn first. */
export function locsFront(head: HairHead, draw: Draw): Layers {
  const outer = outerEdge(head, 6);
  const cap = [
    mass(closedPath(outer, reversed(hairline(head)))),
    drawnCurve('hair', 'strand', outer, [0.3, 0.9, 0.3]),
  ];
  const partX = 7;
  const rows = [1, 0.8, 0.6, 0.4, 0.2, 0];
  const fallen = rows.flatMap((depth) =>
    ([-1, 1] as const).flatMap((hand): Layers => {
      const jitter = (): number => 2.4 * (draw() - 0.5);
      const [front, back] = [frontLoc(head, draw() * 12), backLoc(head, draw() * 14)];
      const spots = front.map((spot, i): Spot => {
        const [u, v] = between(spot, back[i] ?? spot, depth);
        const shift = partX * Math.max(0, 1 - i / 3);
        return [hand * (u + jitter() * Math.min(1, i / 2)) + shift, v + jitter() * 0.6];
      });
      return loc(spots, blend(7.2, 8.6, draw()), draw);
    }),
  );
  return [...cap, ...fallen];
}

function frontLoc({ hairlineV: h, cheek }: HairHead, shorterMm: number): Spots {
  return [
    [1, h + 6],
    [20, h + 2],
    [40, h - 11],
    [cheek - 8, 26],
    [cheek - 1, -12],
    [cheek - 1, -58],
    [cheek - 5, -108 + shorterMm],
  ];
}

function backLoc({ skull }: HairHead, shorterMm: number): Spots {
  return [
    [1, 116],
    [26, 114],
    [55, 99],
    [skull + 7, 56],
    [skull + 12, 4],
    [skull + 12, -56],
    [skull + 10, -112 + shorterMm],
  ];
}

/** One loc: an uneven rope with a rounded end and short winding marks. */
function loc(spots: Spots, widthMm: number, draw: Draw): Layers {
  const course = spline(spots);
  const knots = Array.from({ length: 9 }, (_, i): Spot => {
    const [x, v] = onCurve(course, i / 8);
    return [x + (i % 2 ? 0.4 : -0.4) * draw(), v];
  });
  const body = penLine(spline(knots), [widthMm * 0.42, widthMm, widthMm * 0.45]);
  const marks: Step[] = [];
  for (let t = 0.05; t < 0.97; t += 0.05 + 0.045 * draw()) {
    const here = onCurve(course, t);
    const next = onCurve(course, Math.min(1, t + 0.012));
    const length = Math.hypot(next[0] - here[0], next[1] - here[1]) || 1;
    const along: Spot = [(next[0] - here[0]) / length, (next[1] - here[1]) / length];
    const half = widthMm * (0.2 + 0.12 * draw());
    const side = (k: number, forth: number): Spot => [
      here[0] - along[1] * half * k + along[0] * forth,
      here[1] + along[0] * half * k + along[1] * forth,
    ];
    marks.push(['M', side(-1, 0)], ['Q', side(0, 1.6), side(0.8, 0.9)]);
  }
  return [mass(body), stroked('hair', 'strand', body, 0.5), stroked('hair', 'strand', marks, 0.26)];
}
