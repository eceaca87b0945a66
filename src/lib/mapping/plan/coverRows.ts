import type { FacePoint } from '../marks/faceFrame.ts';
import type { Side } from '../marks/markSet.ts';
import { spanRow, type EdgeSpan, type EdgeSpans } from './edgeSpans.ts';
import { edgesOf, type OldShape } from './oldShape.ts';
import { marginTaperMm } from '../numbers/plan.ts';
import type { Holder, Row } from './row.ts';

/**
 * One condition for covering the old shape: Σ share × height ≥ edgeMm + share of the margin × margin. Heights
 * of the lower edge count downwards, so that one form serves both edges.
 */
export type CoverRow = Readonly<{
  coefficients: readonly number[];
  edgeMm: number;
  marginShare: number;
  holder: Holder;
}>;

/** Longest piece of an old edge that one set of rows answers for, mm. */
const pieceMm = { upper: 8, lower: 2.5 } as const;

/**
 * Rows on the five heights of one side that guarantee the old shape lies inside the outline with its margin,
 * wherever the outline reaches: from the front line to the tail end. What lies in front or beyond no height
 * can cover.
 *
 * Why it is a guarantee between the corners, too: turned against the clock, the top of the old shape at any
 * place belongs to an edge that runs inward and its foot to one that runs outward, so the first must lie
 * below the upper edge, the second above the lower one. Over a piece of an old edge the gap to the outline is
 * a cubic in u, and its four Bézier heights are linear in the marks. A cubic lies between its least and
 * greatest Bézier height, so four heights at nought or more keep the whole piece inside. Under an upper edge
 * that rises to the arch the ends of a piece decide, the inner heights follow. Over a lower edge that does,
 * the rows ask for a little too much: at most length²/24 times the bend 3 × rise / width², 0.02 mm for a
 * piece of 2.5 mm and a rise of 7 mm over 17. No margin is asked of a leaning front line.
 */
export function coverRows(old: OldShape, spans: EdgeSpans, side: Side, tailMm: number): readonly CoverRow[] {
  const rows: CoverRow[] = [];
  const seen = new Set<string>();
  for (const [a, b] of edgesOf(old.corners)) {
    const edge = b.uMm < a.uMm ? 'upper' : 'lower';
    const [from, to] = edge === 'upper' ? [b, a] : [a, b];
    for (const span of spans[edge]) {
      for (const [startMm, endMm] of piecesOf(from, to, span, tailMm, pieceMm[edge])) {
        for (const k of [0, 1, 2, 3]) {
          const uMm = startMm + ((endMm - startMm) * k) / 3;
          const place = (n: number) => (k >= n ? endMm : startMm);
          const share = (uMm - from.uMm) / (to.uMm - from.uMm);
          const vMm = from.vMm + share * (to.vMm - from.vMm);
          const sign = edge === 'upper' ? 1 : -1;
          // Neighbouring pieces share their ends: one row is enough.
          const key = `${edge} ${span.isCurved} ${uMm.toFixed(9)} ${vMm.toFixed(9)}`;
          if (seen.has(key)) continue;
          seen.add(key);
          rows.push({
            coefficients: spanRow(span, place(3), place(2), place(1)).map((part) => sign * part),
            edgeMm: sign * vMm,
            marginShare: span.isCurved ? Math.min(1, (tailMm - uMm) / marginTaperMm) : 0,
            holder: { kind: 'old-work', side, edge, uMm },
          });
        }
      }
    }
  }
  return rows;
}

/**
 * The stretch of an old edge that one span answers for, cut where the margin begins to shrink and into short
 * pieces. An upright edge has none.
 */
function piecesOf(
  from: FacePoint,
  to: FacePoint,
  span: EdgeSpan,
  tailMm: number,
  longestMm: number,
): readonly (readonly [number, number])[] {
  const startMm = Math.max(from.uMm, span.fromMm);
  const endMm = Math.min(to.uMm, span.toMm);
  if (!(endMm > startMm)) return [];
  const cutMm = tailMm - marginTaperMm;
  const stretches =
    startMm < cutMm && cutMm < endMm
      ? ([
          [startMm, cutMm],
          [cutMm, endMm],
        ] as const)
      : ([[startMm, endMm]] as const);
  return stretches.flatMap(([a, b]) => {
    const count = Math.ceil((b - a) / longestMm);
    const at = (i: number) => a + ((b - a) * i) / count;
    return Array.from({ length: count }, (_, i) => [at(i), at(i + 1)] as const);
  });
}

/** The rows of a cover as conditions on the five heights, with a margin, mm. */
export function withMargin(rows: readonly CoverRow[], marginMm: number): readonly Row[] {
  return rows.map(({ coefficients, edgeMm, marginShare, holder }) => ({
    coefficients,
    atLeast: edgeMm + marginShare * marginMm,
    holder,
  }));
}
