/** A place in a drawing: [across, up], millimetres. Tuples, because an outline is a list of them. */
export type Spot = readonly [x: number, y: number];
export type Spots = readonly Spot[];

export function clamp(value: number, lo: number, hi: number): number {
  return Math.min(hi, Math.max(lo, value));
}

/** Straight interpolation: a at t = 0, b at t = 1. */
export function blend(a: number, b: number, t: number): number {
  return a + (b - a) * t;
}

export function between(a: Spot, b: Spot, t: number): Spot {
  return [blend(a[0], b[0], t), blend(a[1], b[1], t)];
}

export function distance(a: Spot, b: Spot): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** The i-th spot, held inside the list. */
export function spotAt(spots: Spots, index: number): Spot {
  return spots[clamp(index, 0, spots.length - 1)] ?? [0, 0];
}

/** The spot after the i-th of a closed outline. */
export function spotAfter(spots: Spots, index: number): Spot {
  return spots[(index + 1) % spots.length] ?? [0, 0];
}

/** The same spots on the other side of x = 0, in reverse order, so that an outline can run on. */
export function mirrored(spots: Spots): Spots {
  return spots.map(([x, y]): Spot => [-x, y]).reverse();
}

/** Spots as they lie on one side: outward distances become x. */
export function onSide(outward: 1 | -1, spots: Spots): Spots {
  return spots.map(([u, v]): Spot => [outward * u, v]);
}

/** Straight interpolation in a small table [[x, y], …] with rising x: growth angles an artist can read. */
export function readTable(table: Spots, x: number): number {
  for (let i = 1; i < table.length; i++) {
    const before = spotAt(table, i - 1);
    const after = spotAt(table, i);
    if (x <= after[0])
      return blend(before[1], after[1], clamp((x - before[0]) / (after[0] - before[0]), 0, 1));
  }
  return spotAt(table, table.length - 1)[1];
}
