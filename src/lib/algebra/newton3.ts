import { solve3, type Triple } from './solve3.ts';

export type Newton = Readonly<{
  /** How far each number is nudged to see the slope there. */
  step: number;
  /** The farthest any number may move in one round. */
  longestMove: number;
  /** A miss shorter than this is none. */
  nearEnough: number;
  /** No number may come so far from 0; no limit if not said. */
  farthest?: number;
}>;

const rounds = 60;

/**
 * Three numbers at which three misses vanish together: Newton's method from 0, 0, 0, with slopes by
 * differences and each move held short. Undefined where that does not get there in 60 looks, or where the
 * slopes lead nowhere.
 */
export function newton3(
  missOf: (at: Triple) => Triple,
  { step, longestMove, nearEnough, farthest = Infinity }: Newton,
): Triple | undefined {
  let at: Triple = [0, 0, 0];
  for (let round = 0; round < rounds; round++) {
    const miss = missOf(at);
    if (Math.hypot(...miss) < nearEnough) return at;
    const slope = (nudged: Triple): Triple => {
      const moved = missOf(nudged);
      return [(moved[0] - miss[0]) / step, (moved[1] - miss[1]) / step, (moved[2] - miss[2]) / step];
    };
    const [x, y, z] = at;
    const move = solve3([slope([x + step, y, z]), slope([x, y + step, z]), slope([x, y, z + step])], miss);
    if (!move) return undefined;
    const shrink = Math.max(1, ...move.map((part) => Math.abs(part) / longestMove));
    at = [x - move[0] / shrink, y - move[1] / shrink, z - move[2] / shrink];
    if (at.some((number) => Math.abs(number) >= farthest)) return undefined;
  }
  return undefined;
}
