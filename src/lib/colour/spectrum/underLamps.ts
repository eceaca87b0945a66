import { ciede2000 } from '../spaces/ciede2000.ts';
import type { Lab } from '../spaces/lab.ts';
import type { Lamp } from './lamps.ts';
import { spectrumToLab } from './observe.ts';
import type { SkinOptics } from '../layers/skinOptics.ts';
import { plainPrediction, type Plan } from '../healing/uncertainHealing.ts';

/**
 * One thing, seen in daylight and under another lamp. `since` is how far it has moved from the first time,
 * ΔE00, under each.
 */
export type TwoLooks = Readonly<{ years: number; day: Lab; seen: Lab; sinceDay: number; sinceSeen: number }>;

export type UnderLamps = Readonly<{ skin: Readonly<{ day: Lab; seen: Lab }>; times: readonly TwoLooks[] }>;

/**
 * The bare skin or old work of today, and a mix in it at each time, both in daylight (D65) and under `lamp`:
 * the plain predictions.
 */
export function underLamps(skin: SkinOptics, plan: Plan, times: readonly number[], lamp: Lamp): UnderLamps {
  const both = (years: number) => ({
    day: plainPrediction(skin, plan, years),
    seen: plainPrediction(skin, plan, years, lamp),
  });
  const first = both(times[0] ?? 0);
  return {
    skin: { day: spectrumToLab(skin.reflectance), seen: spectrumToLab(skin.reflectance, lamp) },
    times: times.map((years) => {
      const { day, seen } = both(years);
      return {
        years,
        day,
        seen,
        sinceDay: ciede2000(first.day, day),
        sinceSeen: ciede2000(first.seen, seen),
      };
    }),
  };
}
