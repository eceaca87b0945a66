import { includesZero, type Interval } from '../../quantities/interval.ts';

/**
 * How far the smaller of two shifts must reach, as a share of the larger: from half on it is nearer to "moved
 * as far" than to "stayed".
 */
const alikeFromShare = 0.5;

/**
 * True when the two edges of a brow at one place are off the same way by nearly the same: the whole place
 * reads higher or lower.
 * That is the sign of a shift (her pose, the level, swelling), not of bare skin. Both are given as short of
 * the outline, so a shift is short at one edge and past it at the other; at least one of the two must be
 * shown to be real.
 */
export function bothMoved(short: Interval, across: Interval): boolean {
  if (short.value * across.value >= 0) return false;
  if (includesZero(short) && includesZero(across)) return false;
  const [smaller = 0, larger = 0] = [Math.abs(short.value), Math.abs(across.value)].sort((a, b) => a - b);
  // A share of tenths read from a ruler: 0.8 of 1.6 is half, whatever the last digit of a double says.
  return smaller >= alikeFromShare * larger - 1e-9;
}
