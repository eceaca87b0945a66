import type { Brow } from '../mapping/marks/brow.ts';
import type { FacePoint } from '../mapping/marks/faceFrame.ts';
import { listOf, heightsOf } from '../mapping/plan/heights.ts';
import { edgeSpans, heightRow, type EdgeSpan } from '../mapping/plan/edgeSpans.ts';
import { rowValue } from '../mapping/plan/row.ts';
import { drawFrom, drawNormalWithin, drawWhole, seedFrom } from '../quantities/seed.ts';

export type PracticeOldShape = Readonly<{
  /** 8 to 16 corners in the face's frame, against the clock. */
  corners: readonly FacePoint[];
  /**
   * How far its upper edge was lifted at the arch, and how far its tail runs beyond the brow's, mm. Nought on
   * most.
   */
  liftedMm: number;
  longerMm: number;
}>;

/**
 * The outline of an older tattoo on one brow, always the same for a seed: that brow as somebody else placed
 * it, spread by the years, its edge uneven. About one in four was drawn too high at the arch, about one in
 * four too long at the tail.
 * All spreads assumed. The brow must be one that has an outline.
 */
export function practiceOldShape(brow: Brow, seed: number): PracticeOldShape {
  const draw = drawFrom(seedFrom('old-shape', seed));
  const about = (mean: number, sd: number) => drawNormalWithin(draw, mean, sd, mean - 2 * sd, mean + 2 * sd);
  const liftedMm = draw() < 0.25 ? 1 + 1.5 * draw() : 0;
  const longerMm = draw() < 0.25 ? 1 + 3 * draw() : 0;
  const outMm = about(0.4, 0.5);
  const upMm = about(0, 0.4);
  const spreadMm = about(-0.35, 0.35);
  const spans = edgeSpans(brow);
  const heights = listOf(heightsOf(brow));
  const heightAt = (edge: readonly EdgeSpan[], uMm: number): number => {
    const row = heightRow(edge, uMm);
    return row ? rowValue(row, heights) : brow.tail.vMm;
  };
  const frontMm = Math.max(brow.frontTop.uMm, brow.frontLower.uMm);
  const lengthMm = brow.tail.uMm - frontMm - tipMm;
  // Where on the brow a corner comes from, and where it lies on the older tattoo, drawn longer.
  const stretched = (share: number) => frontMm + outMm + share * (lengthMm + longerMm);
  const bump = (share: number) => Math.max(0, 1 - Math.abs(share - archShare) / archShare);
  const edge = (along: readonly EdgeSpan[], count: number, sign: 1 | -1): readonly FacePoint[] =>
    Array.from({ length: count }, (_, i) => {
      const share = i / count;
      const vMm =
        heightAt(along, frontMm + share * lengthMm) +
        upMm +
        sign * (spreadMm + about(0, unevenMm)) +
        (sign === 1 ? liftedMm * bump(share) : 0);
      return { uMm: stretched(share), vMm };
    });
  const upper = edge(spans.upper, drawWhole(draw, 4, 8), 1);
  const lower = edge(spans.lower, drawWhole(draw, 3, 7), -1);
  const tip = { uMm: stretched(1), vMm: heightAt(spans.lower, brow.tail.uMm - tipMm) + upMm + tipMm / 4 };
  return { corners: [...lower, tip, ...[...upper].reverse()], liftedMm, longerMm };
}

/** The old tail ends so far short of the brow's tip. */
const tipMm = 2.4;
const unevenMm = 0.12;
/** Where along the brow the lift is greatest. */
const archShare = 0.6;
