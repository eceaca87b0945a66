import { drawFrom, seedFrom, type Draw } from '#lib/quantities/seed.ts';

/**
 * The two numbers that give one normal deviate z: √(-2 ln(1 - a)) cos 2πb, with b = 0 for the sign plus and b
 * = ½ for minus (Box & Muller 1958).
 */
export function normalOf(z: number): readonly number[] {
  return [1 - Math.exp((-z * z) / 2), z < 0 ? 0.5 : 0];
}

/**
 * Draws the numbers given, then zeros. A zero pair is the mean of a normal; a zero is the first item of a
 * list.
 */
export function scripted(...values: readonly number[]): Draw {
  let next = 0;
  return () => values[next++] ?? 0;
}

export const draw0: Draw = () => 0;

export function always(value: number): Draw {
  return () => value;
}

export function sample<T>(count: number, make: (draw: Draw, index: number) => T): readonly T[] {
  return Array.from({ length: count }, (_, i) => make(drawFrom(seedFrom('sample', i)), i));
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

export function sdOf(values: readonly number[]): number {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}

export function correlation(a: readonly number[], b: readonly number[]): number {
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  const together = meanOf(a.map((value, i) => (value - meanA) * ((b[i] ?? Number.NaN) - meanB)));
  return together / (sdOf(a) * sdOf(b));
}

/** Four standard deviations of a share found in so many draws. */
export function shareWithin(share: number, count: number): number {
  return 4 * Math.sqrt((share * (1 - share)) / count);
}
