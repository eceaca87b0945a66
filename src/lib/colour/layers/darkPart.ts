import type { Lab } from '../spaces/lab.ts';
import { ninetyOf, type Ageing } from '../healing/uncertainHealing.ts';

/** The ranges nine in ten healings fall into, each coordinate on its own. */
export type LabRanges = Readonly<{
  l: readonly [number, number];
  a: readonly [number, number];
  b: readonly [number, number];
}>;

/** A plain prediction and the ranges of simulated healings around it. */
export type Predicted = Readonly<{ plain: Lab; ranges: LabRanges }>;

export function rangesOf(labs: readonly Lab[]): LabRanges {
  return {
    l: ninetyOf(labs.map(({ l }) => l)),
    a: ninetyOf(labs.map(({ a }) => a)),
    b: ninetyOf(labs.map(({ b }) => b)),
  };
}

const gone = { keptAtSixWeeks: 0, lostPerYear: 0 } as const;

/** The same ageing with all yellow and red gone at once: what is left is the dark part and any white. */
export function withoutWarm(ageing: Ageing): Ageing {
  return { ...ageing, '77492': gone, '77491': gone };
}
