import { coded } from '../spaces/srgb.ts';
import { linearLight, type Rgb } from '../spaces/srgbToLab.ts';
import type { Patch } from './photoReading.ts';

/**
 * A coded value of 255 steps this near to an end counts as clipped: a picture that was packed loses the last
 * step.
 */
const endSteps = 1;

type Sums = Readonly<{ light: number; coded: number; squares: number }>;

function channelSums(dots: ArrayLike<number>, channel: 0 | 1 | 2, end: number): Sums {
  let [light, sum, squares] = [0, 0, 0];
  for (let at = channel; at < end; at += 4) {
    const value = (dots[at] ?? 0) / 255;
    light += linearLight(value);
    sum += value;
    squares += value * value;
  }
  return { light, coded: sum, squares };
}

const isAtAnEnd = (value = 0) => value <= endSteps || value >= 255 - endSteps;

/**
 * A patch from its dots: red, green, blue and opacity of each in turn, 0 to 255, as a canvas gives them.
 * The mean is one of light, coded again; the spread is the standard deviation of the coded values. Undefined
 * without a whole dot; what is left of a broken one does not count.
 */
export function patchOf(dots: ArrayLike<number>): Patch | undefined {
  const count = Math.floor(dots.length / 4);
  if (count < 1) return undefined;
  const end = 4 * count;
  const [r, g, b] = [channelSums(dots, 0, end), channelSums(dots, 1, end), channelSums(dots, 2, end)];
  let clipped = 0;
  for (let at = 0; at < end; at += 4)
    if (isAtAnEnd(dots[at]) || isAtAnEnd(dots[at + 1]) || isAtAnEnd(dots[at + 2])) clipped++;
  const each = (of: (sums: Sums) => number): Rgb => ({ r: of(r), g: of(g), b: of(b) });
  return {
    mean: each(({ light }) => coded(light / count)),
    spread: each(({ coded: sum, squares }) => Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2))),
    clippedShare: clipped / count,
  };
}
