import type { Brow } from '../marks/brow.ts';
import { browMarks } from '../marks/markSet.ts';
import type { FrontEdge } from '../placing/drawnLengths.ts';
import { edgesOf } from './edges.ts';
import { stationMm } from './station.ts';
import { thicknessAt } from './thickness.ts';

const stepMm = 1e-4;

/**
 * For each station: how uncertain its thickness is for each mm by which every coordinate of the brow's marks
 * is uncertain.
 * The root of the sum of the squared slopes (GUM, JCGM 100:2008, 5.1.2), each slope by one small step; the
 * station moves with front and tail. Undefined where there is no thickness.
 */
export function thicknessSlopes(
  brow: Brow,
  edge: FrontEdge,
  shares: readonly number[],
): readonly (number | undefined)[] {
  const moved = browMarks.flatMap((mark) =>
    (['uMm', 'vMm'] as const).map((axis): Brow => ({
      ...brow,
      [mark]: { ...brow[mark], [axis]: brow[mark][axis] + stepMm },
    })),
  );
  const made = [brow, ...moved].map((one) => ({ one, edges: edgesOf(one) }));
  return shares.map((share) => {
    const [now, ...then] = made.map(({ one, edges }) => thicknessAt(edges, stationMm(one, edge, share)));
    if (!now?.ok) return undefined;
    let sum = 0;
    for (const thickness of then) {
      if (!thickness.ok) return undefined;
      sum += ((thickness.thicknessMm - now.thicknessMm) / stepMm) ** 2;
    }
    return Math.sqrt(sum);
  });
}
