import { type Dots, shareOfDots, type Strokes } from './coverage.ts';

/** A share of skin with the ends between which the true share lies in 95 of 100 cases. */
export type ShareWithin = Readonly<{ share: number; lo: number; hi: number }>;

/** How many times as much, or as little, may have been drawn: in 95 of 100 cases between ÷ and × this. */
function timesOff(parts: readonly (readonly [value: number, giveOrTake: number, power: number])[]): number {
  return Math.exp(
    Math.hypot(...parts.map(([value, giveOrTake, power]) => (value > 0 ? (power * giveOrTake) / value : 0))),
  );
}

/**
 * Share covered by strokes whose numbers are known give or take something. Each "give or take" is meant to
 * hold in 95 of 100 cases; relative doubts of n·l·w/A add as squares (GUM, JCGM 100:2008, 5.1.6), and the
 * ends pass through `cover`, so they never leave 0 to 1. `cover` is shareApart or shareAtRandom.
 */
export function strokesWithin(
  strokes: Strokes,
  giveOrTake: Strokes,
  cover: (strokes: Strokes) => number,
): ShareWithin {
  const times = timesOff([
    [strokes.count, giveOrTake.count, 1],
    [strokes.lengthMm, giveOrTake.lengthMm, 1],
    [strokes.widthMm, giveOrTake.widthMm, 1],
    [strokes.areaMm2, giveOrTake.areaMm2, 1],
  ]);
  const wide = (factor: number) => cover({ ...strokes, widthMm: strokes.widthMm * factor });
  return { share: wide(1), lo: wide(1 / times), hi: wide(times) };
}

/** Share covered by dots, likewise. A dot's diameter counts twice: its area goes with the square. */
export function dotsWithin(dots: Dots, giveOrTake: Dots): ShareWithin {
  const times = timesOff([
    [dots.perMm2, giveOrTake.perMm2, 1],
    [dots.diameterMm, giveOrTake.diameterMm, 2],
  ]);
  const dense = (factor: number) => shareOfDots({ ...dots, perMm2: dots.perMm2 * factor });
  return { share: dense(1), lo: dense(1 / times), hi: dense(times) };
}
