import type { Face } from '#lib/face/face.ts';
import { onCurve, spline, type Curve } from '../curve.ts';
import { openPath } from '../path.ts';
import { penThrough } from '../penLine.ts';
import { filled, stroked, type Layer } from '../shape.ts';
import { blend, mirrored, type Spot, type Spots } from '#lib/face/spot.ts';
import type { Path } from '../path.ts';

/** What hair needs to know of the head. */
export type HairHead = Readonly<{
  skull: number;
  cheek: number;
  temple: number;
  hairlineV: number;
  chinV: number;
}>;

export function hairHeadOf({ form, landmarks }: Face): HairHead {
  return {
    skull: form.skullMm,
    cheek: form.cheekMm,
    temple: blend(form.skullMm, form.cheekMm, 0.6),
    hairlineV: form.hairlineV,
    chinV: landmarks.middle.chin[1],
  };
}

/** Where hair in front of the ear ends: hairline and outer edge meet there in a point. */
export function sideburnTip({ temple }: HairHead): Spot {
  return [temple - 1, -9];
}

/** From one sideburn over the forehead to the other: where skin meets hair. */
export function hairline(head: HairHead): Curve {
  const { hairlineV: h, cheek, temple } = head;
  const templeU = cheek - 10;
  const half: Spots = [
    [18, h - 1],
    [33, h - 5.5],
    [44, h - 14],
    [blend(46, templeU, 0.7), blend(h - 14, 25, 0.5)],
    [templeU, 25],
    [cheek - 7.5, 13],
    [temple - 4, 3],
    sideburnTip(head),
  ];
  return spline([...mirrored(half), [0, h], ...half]);
}

/** The hair's outer edge from sideburn to sideburn, so many millimetres off the head. */
export function outerEdge(head: HairHead, offMm: number): Curve {
  const { skull, temple } = head;
  const half: Spots = [
    [38 + offMm * 0.4, 107 + offMm * 0.8],
    [62 + offMm * 0.8, 88 + offMm * 0.4],
    [skull + offMm * 0.8, 58],
    [skull + offMm * 0.7, 34],
    [temple + 1 + offMm * 0.35, 11],
    sideburnTip(head),
  ];
  return spline([...mirrored(half), [0, 114 + offMm], ...half]);
}

/** A place between two edges that run the same way: t along, depth 0 at the first and 1 at the second. */
export function betweenEdges(first: Curve, second: Curve, t: number, depth: number): Spot {
  const a = onCurve(first, t);
  const b = onCurve(second, t);
  return [blend(a[0], b[0], depth), blend(a[1], b[1], depth)];
}

export function mass(path: Path): Layer {
  return filled('hair', 'mass', path);
}

export function strand(spots: Spots, widthMm: number): Layer {
  return { part: 'hair', role: 'strand', path: penThrough(spots, [0.06, widthMm, 0.06]) };
}

/** Many fine strands as one path. */
export function fineStrands(lines: readonly Spots[], strokeMm: number): Layer {
  return stroked(
    'hair',
    'strand',
    lines.flatMap((spots) => openPath(spline(spots))),
    strokeMm,
  );
}
