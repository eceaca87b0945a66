import type { Lab } from '../spaces/lab.ts';
import type { Lamp } from '../spectrum/lamps.ts';
import type { SkinOptics } from '../layers/skinOptics.ts';
import { ninetyOf, plainPrediction, simulatedHealings, type Ageing, type Plan } from './uncertainHealing.ts';

/** From where to where nine healings in ten lie. */
export type Nine = readonly [number, number];

/** One mix at one moment: the plain prediction, and where 9 in 10 simulated healings lie. */
export type DriftPoint = Readonly<{
  /** Weeks after the treatment; 0 is fresh. */
  weeks: number;
  plain: Lab;
  l: Nine;
  a: Nine;
  b: Nine;
}>;

const healedWeeks = 6;
const yearWeeks = 52;

const nothingLost: Ageing = {
  '77891': { keptAtSixWeeks: 1, lostPerYear: 0 },
  '77492': { keptAtSixWeeks: 1, lostPerYear: 0 },
  '77491': { keptAtSixWeeks: 1, lostPerYear: 0 },
  '77499': { keptAtSixWeeks: 1, lostPerYear: 0 },
  '77266': { keptAtSixWeeks: 1, lostPerYear: 0 },
};

/**
 * The colour from fresh on: first as put in, with nothing lost, then at each of `times` (years after six
 * weeks). The same seeded healings run through all of it. "Fresh" is pigment in calm skin: swelling, crust
 * and redness are not in it.
 */
export function drift(
  skin: SkinOptics,
  plan: Plan,
  times: readonly number[],
  draws: number,
  seed: number,
  lamp: Lamp = 'D65',
): readonly DriftPoint[] {
  const asPutIn: Plan = { ...plan, ageing: nothingLost, doubts: { ...plan.doubts, kept: 0, lost: 0 } };
  const point = (weeks: number, plain: Lab, seen: readonly Lab[]): DriftPoint => ({
    weeks,
    plain,
    l: ninetyOf(seen.map(({ l }) => l)),
    a: ninetyOf(seen.map(({ a }) => a)),
    b: ninetyOf(seen.map(({ b }) => b)),
  });
  const fresh = simulatedHealings(skin, asPutIn, [0], draws, seed, lamp).flat();
  const healings = simulatedHealings(skin, plan, times, draws, seed, lamp);
  return [
    point(0, plainPrediction(skin, asPutIn, 0, lamp), fresh),
    ...times.map((years, i) =>
      point(
        healedWeeks + yearWeeks * years,
        plainPrediction(skin, plan, years, lamp),
        healings.flatMap((one) => one[i] ?? []),
      ),
    ),
  ];
}
