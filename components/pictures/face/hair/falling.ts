import type { Draw } from '#lib/quantities/seed.ts';
import { onCurve, reversed, spline } from '../curve.ts';
import { closedPath } from '../path.ts';
import { drawnCurve, drawnLine, type Layers } from '../shape.ts';
import { between, blend, mirrored, onSide, spotAt, type Spot, type Spots } from '#lib/face/spot.ts';
import { mass, strand, type HairHead } from './hairHead.ts';

/** Straight hair that falls from a parting: to the chin or past the shoulders. */
export type Fall = Readonly<{
  endV: number;
  offMm: number;
  flareMm: number;
  partX: number;
  innerEndMm: number;
}>;

export const bobFall: Fall = { endV: -92, offMm: 9, flareMm: -6, partX: 15, innerEndMm: 10 };
export const longFall: Fall = { endV: -168, offMm: 12, flareMm: 2, partX: -5, innerEndMm: 16 };

/** The part that hangs behind the neck. */
export function fallingBack({ skull }: HairHead, fall: Fall): Layers {
  const half: Spots = [
    [38, 112],
    [66, 92],
    [skull + 9, 56],
    [skull + fall.offMm, 0],
    [skull + fall.offMm - 2, -50],
    [skull + fall.offMm + fall.flareMm, fall.endV],
  ];
  const outer = spline([...mirrored(half), [0, 119], ...half]);
  return [mass(closedPath(outer)), drawnCurve('hair', 'strand', outer, [0.6, 1, 0.6])];
}

/** The two curtains in front. */
export function fallingFront(head: HairHead, fall: Fall, draw: Draw): Layers {
  const { partX, endV } = fall;
  const parting = drawnLine(
    'hair',
    'strand',
    [
      [partX, head.hairlineV + 5],
      [partX + 0.6, 92],
      [partX - 0.5, 117],
    ],
    [0.3, 0.5, 0.2],
  );
  const curtains = ([-1, 1] as const).flatMap((hand): Layers => {
    const inner: Spots = [[partX, head.hairlineV + 6], ...onSide(hand, innerEdge(head, fall))];
    const outer: Spots = [[partX, 118], ...onSide(hand, outerSide(head, fall))];
    const innerCurve = spline(inner);
    const outerCurve = spline(outer);
    const innerEnd = spotAt(inner, inner.length - 1);
    const outerEnd = spotAt(outer, outer.length - 1);
    const strands = Array.from({ length: 11 }, (_, i) => {
      const across = (i + 1) / 12;
      const from = 0.02 + 0.25 * draw();
      const to = 0.7 + 0.3 * draw();
      const spots = [0, 0.25, 0.5, 0.75, 1].map((t): Spot => {
        const u = blend(from, to, t);
        return between(onCurve(innerCurve, u), onCurve(outerCurve, u), across);
      });
      return strand(spots, 0.3 + 0.45 * draw());
    });
    return [
      mass(closedPath(innerCurve, reversed(outerCurve))),
      drawnCurve('hair', 'strand', innerCurve, [0.3, 0.9, 0.4]),
      drawnCurve('hair', 'strand', outerCurve, [0.5, 1, 0.5]),
      ...(endV > -140
        ? [drawnLine('hair', 'strand', [innerEnd, between(innerEnd, outerEnd, 0.5), outerEnd], [0.3, 1, 0.5])]
        : []),
      ...strands,
    ];
  });
  return [...curtains, parting];
}

function innerEdge({ cheek, hairlineV }: HairHead, { endV, innerEndMm }: Fall): Spots {
  return [
    [34, hairlineV - 6],
    [cheek - 11, 36],
    [cheek - 2, 4],
    [cheek + 0.5, -30],
    [cheek + 7 - innerEndMm, -74],
    [cheek - innerEndMm, endV],
  ];
}

function outerSide({ skull }: HairHead, { endV, offMm, flareMm }: Fall): Spots {
  return [
    [42, 111],
    [67, 91],
    [skull + 9, 56],
    [skull + offMm, 0],
    [skull + offMm - 2, -50],
    [skull + offMm + flareMm, endV],
  ];
}
