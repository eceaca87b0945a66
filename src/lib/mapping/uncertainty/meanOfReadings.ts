import { intervalAround, type Interval } from '../../quantities/interval.ts';
import { studentFactor } from './studentFactor.ts';

export type MeanOfReadings =
  | Readonly<{ ok: true; mean: Interval; deviationMm: number }>
  | Readonly<{ ok: false; reason: 'fewer-than-two-readings' }>;

/**
 * The mean of a few readings of one thing with its 95 % interval, mean ± t·s/√n (GUM 4.2, G.3), the spread
 * taken from these readings alone. With two readings t is 12.7, with three 4.3: so few do not know their own
 * spread. Use a technical error from a practice sheet instead, where there is one.
 */
export function meanOfReadings(readingsMm: readonly number[]): MeanOfReadings {
  const count = readingsMm.length;
  if (count < 2) return { ok: false, reason: 'fewer-than-two-readings' };
  const meanMm = readingsMm.reduce((sum, reading) => sum + reading, 0) / count;
  const deviationMm = Math.sqrt(
    readingsMm.reduce((sum, reading) => sum + (reading - meanMm) ** 2, 0) / (count - 1),
  );
  return {
    ok: true,
    mean: intervalAround(meanMm, deviationMm / Math.sqrt(count), studentFactor(count - 1)),
    deviationMm,
  };
}
