import { includesZero, type Interval } from '../../quantities/interval.ts';
import type { SkinState } from '../markSet.ts';

/** Why nothing is added at a mark. */
export const stopReasons = ['over', 'not-shown', 'swollen'] as const;
export type StopReason = (typeof stopReasons)[number];

/** All that may still be done at a mark after the first pass: pigment cannot be taken out. */
export type NextStep = Readonly<{ do: 'add-here'; addMm: number }> | Readonly<{ do: 'stop'; because: StopReason }>;

/**
 * The next step at one mark, from how far the pigment ends short of the approved outline (negative: past it).
 * Past the outline, or not shown to be short: stop. Short, but under `chaseFromMm` on swollen skin: stop, the skin will move
 * back. Otherwise add here, up to the outline and no further.
 */
export function nextStep(short: Interval, skin: SkinState, chaseFromMm: number): NextStep {
  if (includesZero(short)) return { do: 'stop', because: 'not-shown' };
  if (short.value < 0) return { do: 'stop', because: 'over' };
  if (skin === 'swollen' && short.value < chaseFromMm) return { do: 'stop', because: 'swollen' };
  return { do: 'add-here', addMm: short.value };
}
