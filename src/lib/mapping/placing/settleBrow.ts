import type { Side } from '../marks/markSet.ts';

/** Which side's reading becomes the plan for both: one of them, or the middle of the two. */
export type SettleFrom = 'mean' | Side;

/** Front and tail of one brow, distances from the midline. */
export type BrowEnds = Readonly<{ frontMm: number; tailMm: number }>;

/** One front and one tail for both sides, and the length between them as seen from the front. */
export type SettledBrow = BrowEnds & Readonly<{ lengthMm: number }>;

export type Settled =
  | Readonly<{ ok: true; brow: SettledBrow }>
  | Readonly<{ ok: false; reason: 'no-length' }>;

/** One number for both sides from a right and a left one. */
export function settleMm({ right, left }: Readonly<Record<Side, number>>, from: SettleFrom): number {
  if (from === 'mean') return (right + left) / 2;
  return from === 'right' ? right : left;
}

/** A brow that has length: its tail lies further out than its front. */
export function settledBrow({ frontMm, tailMm }: BrowEnds): Settled {
  const lengthMm = tailMm - frontMm;
  return lengthMm > 0
    ? { ok: true, brow: { frontMm, tailMm, lengthMm } }
    : { ok: false, reason: 'no-length' };
}

/**
 * Settles one front and one tail before any arch is placed. Two sides that are not shown to differ would
 * otherwise each get an arch of their own, and the plan would carry reading errors into the skin.
 */
export function settleBrow(ends: Readonly<Record<Side, BrowEnds>>, from: SettleFrom): Settled {
  const { right, left } = ends;
  return settledBrow({
    frontMm: settleMm({ right: right.frontMm, left: left.frontMm }, from),
    tailMm: settleMm({ right: right.tailMm, left: left.tailMm }, from),
  });
}
