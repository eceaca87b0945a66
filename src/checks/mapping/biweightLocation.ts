import { biweight } from '#lib/mapping/midline/robustMidline.ts';

/**
 * The biweight location as the Dataplot manual prints it, built on our weight: start at the median, cut off
 * at 6 times the median distance, ten rounds. Only for checking the weight; the midline uses another cut-off.
 */
export function biweightLocation(values: readonly number[]): number {
  let at = median(values);
  for (let round = 0; round < 10; round++) {
    const centre = at;
    const cutOff = 6 * median(values.map((value) => Math.abs(value - centre)));
    const weights = values.map((value) => biweight(value - centre, cutOff));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    at = values.reduce((sum, value, i) => sum + value * (weights[i] ?? 0), 0) / total;
    if (Math.abs(at - centre) < 1e-6) break;
  }
  return at;
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] ?? 0) + (sorted[Math.ceil(half)] ?? 0)) / 2;
}
