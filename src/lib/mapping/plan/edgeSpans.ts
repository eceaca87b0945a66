import type { Brow } from '../marks/brow.ts';
import { browMarks, type BrowMark } from '../marks/markSet.ts';

export type Edge = 'upper' | 'lower';

/**
 * A stretch of one edge. `end` and `other` are the marks that set its height; a curved one is level at
 * `other`, the arch.
 */
export type EdgeSpan = Readonly<{
  isCurved: boolean;
  end: BrowMark;
  other: BrowMark;
  fromMm: number;
  toMm: number;
  endMm: number;
  otherMm: number;
}>;
export type EdgeSpans = Readonly<Record<Edge, readonly EdgeSpan[]>>;

/**
 * Both edges of a brow from front to tail. Where the front leans, its straight line belongs to the edge that
 * begins later, so that the outline is everywhere the strip between one upper and one lower height. The brow
 * must be one that has an outline.
 */
export function edgeSpans(brow: Brow): EdgeSpans {
  const { frontLower, frontTop } = brow;
  const curved = (end: BrowMark, arch: BrowMark): EdgeSpan => {
    const [endMm, otherMm] = [brow[end].uMm, brow[arch].uMm];
    return {
      isCurved: true,
      end,
      other: arch,
      endMm,
      otherMm,
      fromMm: Math.min(endMm, otherMm),
      toMm: Math.max(endMm, otherMm),
    };
  };
  const front: EdgeSpan = {
    isCurved: false,
    end: 'frontLower',
    other: 'frontTop',
    endMm: frontLower.uMm,
    otherMm: frontTop.uMm,
    fromMm: Math.min(frontLower.uMm, frontTop.uMm),
    toMm: Math.max(frontLower.uMm, frontTop.uMm),
  };
  return {
    upper: [
      ...(frontTop.uMm > frontLower.uMm ? [front] : []),
      curved('frontTop', 'archTop'),
      curved('tail', 'archTop'),
    ],
    lower: [
      ...(frontLower.uMm > frontTop.uMm ? [front] : []),
      curved('frontLower', 'archLower'),
      curved('tail', 'archLower'),
    ],
  };
}

/**
 * What each mark's height, in the order of `browMarks`, adds to the span's height: its polar form (blossom)
 * at three places.
 * At one place three times it is the height there; at (a, a, b) and (a, b, b) it gives the inner Bézier
 * heights of the piece from a to b (Farin, Curves and Surfaces for CAGD, ch. 3). B = 1 − 1.5t + 0.5t³ becomes
 * 1 − ½(t₁ + t₂ + t₃) + ½ t₁t₂t₃.
 */
export function spanRow(
  { isCurved, end, other, endMm, otherMm }: EdgeSpan,
  ...placesMm: readonly [number, number, number]
): readonly number[] {
  const [a, b, c] = placesMm.map((u) => (u - endMm) / (otherMm - endMm));
  const [t1 = 0, t2 = 0, t3 = 0] = [a, b, c];
  const share = isCurved ? 1 - (t1 + t2 + t3) / 2 + (t1 * t2 * t3) / 2 : 1 - (t1 + t2 + t3) / 3;
  return browMarks.map((mark) => (mark === end ? share : mark === other ? 1 - share : 0));
}

/** The row of an edge's height at one place; undefined in front of the front and beyond the tail. */
export function heightRow(spans: readonly EdgeSpan[], uMm: number): readonly number[] | undefined {
  const span = spans.find(({ fromMm, toMm }) => uMm >= fromMm && uMm <= toMm);
  return span && spanRow(span, uMm, uMm, uMm);
}

/**
 * The outline's area, mm², as a row: closed form of each span, upper minus lower. Curved: width × (0.625 arch
 * + 0.375 end).
 */
export function areaRow({ upper, lower }: EdgeSpans): readonly number[] {
  const area = (spans: readonly EdgeSpan[], mark: BrowMark): number =>
    spans.reduce((sum, { isCurved, end, other, fromMm, toMm }) => {
      const endShare = isCurved ? 0.375 : 0.5;
      return sum + (toMm - fromMm) * (mark === end ? endShare : mark === other ? 1 - endShare : 0);
    }, 0);
  return browMarks.map((mark) => area(upper, mark) - area(lower, mark));
}
