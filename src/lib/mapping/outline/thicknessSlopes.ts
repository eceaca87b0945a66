import type { Brow } from '../brow.ts';
import { browMarks } from '../markSet.ts';
import type { FrontEdge } from '../placing/drawnLengths.ts';
import { outlineOf } from './outline.ts';
import { thicknessAtStation } from './station.ts';

const stepMm = 0.01;

/**
 * For each station: how uncertain its thickness is for each mm by which every coordinate of the brow's marks is uncertain.
 * The root of the sum of the squared slopes (GUM, JCGM 100:2008, 5.1.2), each slope by a small step to either side; the station
 * moves with front and tail. Undefined where a step leaves no thickness.
 */
export function thicknessSlopes(brow: Brow, edge: FrontEdge, shares: readonly number[]): readonly (number | undefined)[] {
  const steps = browMarks.flatMap((mark) =>
    (['uMm', 'vMm'] as const).map((axis) => {
      const moved = (byMm: number) => outlineOf({ ...brow, [mark]: { ...brow[mark], [axis]: brow[mark][axis] + byMm } });
      return { more: moved(stepMm), less: moved(-stepMm) };
    }),
  );
  return shares.map((share) => {
    let sum = 0;
    for (const step of steps) {
      const more = thicknessAtStation(step.more, edge, share);
      const less = thicknessAtStation(step.less, edge, share);
      if (!more.ok || !less.ok) return undefined;
      sum += ((more.thicknessMm - less.thicknessMm) / (2 * stepMm)) ** 2;
    }
    return Math.sqrt(sum);
  });
}
