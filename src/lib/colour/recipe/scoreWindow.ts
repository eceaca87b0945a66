import { whiteOf } from '../observe.ts';
import type { Lab } from '../lab.ts';
import { lightnessEdge } from './differenceFloor.ts';
import { mostByte } from './mixCells.ts';
import { screenError } from './mixScorer.ts';

/** Room for the fraction's error and for rounding in Y of 100. */
const slackY = 0.002;

/**
 * What a recipe of a number of drops may score at most to matter: within max(farEnough, best + near), or as near as the nearest
 * of its drops. Each limit is kept with its window of Y and its highest byte of a floor, ready for the inner loop.
 */
export function scoreWindow(target: Lab, mostDrops: number, { near, farEnough }: Readonly<{ near: number; farEnough: number }>) {
  const room = 2 * screenError(target);
  const nearestOf = new Float64Array(mostDrops + 1).fill(Infinity);
  let nearest = Infinity;
  const limits = new Float64Array(mostDrops + 1).fill(Infinity);
  const yLo = new Float64Array(mostDrops + 1).fill(-Infinity);
  const yHi = new Float64Array(mostDrops + 1).fill(Infinity);
  const bytes = new Uint8Array(mostDrops + 1).fill(255);
  const yOf = (l: number) => (l > 8 ? ((l + 16) / 116) ** 3 : (l * 27) / 24389) * whiteOf('D65').y;
  const refresh = (drops: number): void => {
    const limit = Math.max(farEnough, nearest + near, nearestOf[drops] ?? Infinity) + room;
    limits[drops] = limit;
    yLo[drops] = yOf(lightnessEdge(target.l, limit, 'darkest')) - slackY;
    yHi[drops] = yOf(lightnessEdge(target.l, limit, 'lightest')) + slackY;
    bytes[drops] = mostByte(limit);
  };
  return {
    limits, yLo, yHi, bytes,
    /** A recipe with this score exists. */
    hear: (drops: number, score: number): void => {
      if (score < (nearestOf[drops] ?? Infinity)) {
        nearestOf[drops] = score;
        if (score >= nearest) refresh(drops);
      }
      if (score < nearest) {
        nearest = score;
        for (let each = 1; each <= mostDrops; each++) refresh(each);
      }
    },
  };
}
