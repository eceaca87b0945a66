import fc from 'fast-check';

/**
 * Any number from min to max, evenly spread, both ends included. fc.double draws bit patterns: between −1 and
 * 1 nearly all of them lie within 1e-10 of zero, and a property about angles then hardly sees an angle.
 */
export function real(min: number, max: number): fc.Arbitrary<number> {
  const steps = 1_000_000_007;
  return fc.integer({ min: 0, max: steps }).map((step) => min + ((max - min) * step) / steps);
}
