import type { FacePoint } from '../marks/faceFrame.ts';
import { browMarks } from '../marks/markSet.ts';
import { marginTaperMm } from '../numbers/plan.ts';
import type { Edge, EdgeSpan, EdgeSpans } from './edgeSpans.ts';
import { edgesOf, type OldShape } from './oldShape.ts';

/**
 * A stretch of an old edge beside one span of an outline's edge. Both are counted along the span: t is 0 at
 * the span's end mark and 1 at the other; there the old edge stands at startMm + riseMm·t.
 */
export type OldPiece = Readonly<{
  /** 1: what lies over the upper edge; −1: what lies under the lower one. */
  sign: 1 | -1;
  isCurved: boolean;
  /** Places of the span's two marks in `browMarks`. */
  end: number;
  other: number;
  widthMm: number;
  from: number;
  to: number;
  startMm: number;
  riseMm: number;
}>;

/**
 * An old shape taken apart. Turned against the clock, old work lies under an edge that runs inward and over
 * one that runs outward. So what stands out over the upper edge is all that lies under the inward edges there,
 * less all that lies under the outward ones, and the other way round below.
 */
export type OldPieces = Readonly<{
  /** Their areas beyond the outline add up. */
  added: readonly OldPiece[];
  /** Their areas beyond the outline are taken off again: old work that lies wholly beyond an edge. */
  taken: readonly OldPiece[];
  /** The added ones, moved out by the margin. */
  margin: readonly OldPiece[];
}>;

/**
 * The pieces of an old shape, wherever the outline reaches. The margin is moved straight up and down, shrinks
 * over the last `marginTaperMm` before the tail, and is not asked of a leaning front line.
 */
export function oldPieces(old: OldShape, spans: EdgeSpans, tailMm: number, marginMm: number): OldPieces {
  const [added, taken, margin]: OldPiece[][] = [[], [], []];
  for (const [a, b] of edgesOf(old.corners)) {
    const isTop = b.uMm < a.uMm;
    const [first, last] = isTop ? [b, a] : [a, b];
    for (const edge of ['upper', 'lower'] as const) {
      for (const span of spans[edge]) {
        const [fromMm, toMm] = [Math.max(first.uMm, span.fromMm), Math.min(last.uMm, span.toMm)];
        if (!(toMm > fromMm)) continue;
        const on = (uMm: number): FacePoint => ({
          uMm,
          vMm: first.vMm + ((last.vMm - first.vMm) * (uMm - first.uMm)) / (last.uMm - first.uMm),
        });
        const piece = pieceOf(edge, span, on(fromMm), on(toMm));
        if ((edge === 'upper') !== isTop) {
          taken?.push(piece);
          continue;
        }
        added?.push(piece);
        margin?.push(...(span.isCurved ? movedOut(edge, span, on, fromMm, toMm, tailMm, marginMm) : [piece]));
      }
    }
  }
  return { added: added ?? [], taken: taken ?? [], margin: margin ?? [] };
}

function pieceOf(edge: Edge, span: EdgeSpan, from: FacePoint, to: FacePoint): OldPiece {
  const reachMm = span.otherMm - span.endMm;
  const t = (uMm: number) => (uMm - span.endMm) / reachMm;
  const rise = (to.vMm - from.vMm) / (to.uMm - from.uMm);
  return {
    sign: edge === 'upper' ? 1 : -1,
    isCurved: span.isCurved,
    end: browMarks.indexOf(span.end),
    other: browMarks.indexOf(span.other),
    widthMm: Math.abs(reachMm),
    from: Math.min(t(from.uMm), t(to.uMm)),
    to: Math.max(t(from.uMm), t(to.uMm)),
    startMm: from.vMm + rise * (span.endMm - from.uMm),
    riseMm: rise * reachMm,
  };
}

/** A piece with its margin, cut where the margin begins to shrink. */
function movedOut(
  edge: Edge,
  span: EdgeSpan,
  on: (uMm: number) => FacePoint,
  fromMm: number,
  toMm: number,
  tailMm: number,
  marginMm: number,
): readonly OldPiece[] {
  const out = (uMm: number): FacePoint => {
    const byMm = marginMm * Math.min(1, (tailMm - uMm) / marginTaperMm);
    return { uMm, vMm: on(uMm).vMm + (edge === 'upper' ? byMm : -byMm) };
  };
  const cutMm = tailMm - marginTaperMm;
  if (!(fromMm < cutMm && cutMm < toMm)) return [pieceOf(edge, span, out(fromMm), out(toMm))];
  return [pieceOf(edge, span, out(fromMm), out(cutMm)), pieceOf(edge, span, out(cutMm), out(toMm))];
}
