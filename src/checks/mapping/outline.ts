import { edgesOf } from '#lib/mapping/outline/edges.ts';
import { endShare, endSlope } from '#lib/mapping/outline/halfEdge.ts';
import { thicknessAt } from '#lib/mapping/outline/thickness.ts';
import type { Check } from '../check.ts';

const at = (uMm: number, vMm: number) => ({ uMm, vMm });

/**
 * Two parallel edges so long that they do not bend near their front: a slope, and how far apart they are
 * straight up.
 */
function betweenParallelsMm(slope: number, straightUpMm: number): number {
  const farMm = 3e6;
  const archMm = (slope * farMm) / 1.5;
  const edges = edgesOf({
    frontLower: at(0, 0),
    frontTop: at(0, straightUpMm),
    archTop: at(farMm, archMm + straightUpMm),
    archLower: at(farMm, archMm),
    tail: at(2 * farMm, 0),
  });
  const thickness = thicknessAt(edges, 10);
  return thickness.ok ? thickness.thicknessMm : 0;
}

/** The outline's edges are the curve of a lath clamped at the arch and pulled at its end. */
export const outlineChecks = [
  {
    id: 'lath-half-way',
    kind: 'hand',
    source: 'beam-tables',
    where: 'table B.2, first row: elastic curve at half the length over the greatest deflection',
    what: 'the end’s part of an edge’s height, half way to the arch',
    printed: 0.3125,
    unit: '1',
    tolerance: 1e-9,
    because: 'by hand from the printed formulas: (2.5 ÷ 24) ÷ (1 ÷ 3)',
    ours: (factor = 1) => factor * endShare({ end: at(0, 0), arch: at(30, 8) }, 15),
  },
  {
    id: 'lath-end-slope',
    kind: 'hand',
    source: 'beam-tables',
    where: 'table B.2, first row: greatest slope times the length, over the greatest deflection',
    what: 'slope at the end of an edge, for a rise of 1 over a length of 1',
    printed: 1.5,
    unit: '1',
    tolerance: 1e-9,
    because: 'by hand from the printed formulas: (1 ÷ 2) ÷ (1 ÷ 3)',
    ours: (factor = 1) => factor * endSlope({ end: at(0, 0), arch: at(1, 1) }),
  },
  {
    id: 'thickness-on-a-rising-slope',
    kind: 'table',
    source: 'parallel-lines-up',
    where: 'step 2',
    what: 'straight across two edges that rise 3 in 4 and are 0.5 mm apart straight up',
    printed: 0.4,
    unit: 'mm',
    tolerance: 1e-5,
    because: 'exact in print; our edges bend by less than this',
    ours: (factor = 1) => betweenParallelsMm(0.75, 0.5 * factor),
  },
  {
    id: 'thickness-on-a-falling-slope',
    kind: 'table',
    source: 'parallel-lines-down',
    where: 'answer (b)',
    what: 'straight across two edges that fall 3 in 4 and are 3 mm apart straight up',
    printed: 2.4,
    unit: 'mm',
    tolerance: 1e-5,
    because: 'exact in print; our edges bend by less than this',
    ours: (factor = 1) => betweenParallelsMm(-0.75, 3 * factor),
  },
] as const satisfies readonly Check[];
