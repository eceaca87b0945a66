import { includesZero, type Interval } from '../../quantities/interval.ts';
import type { SkinState } from '../marks/markSet.ts';
import { bothMoved } from './bothMoved.ts';

/** Why nothing is added at a mark. */
export const stopReasons = ['over', 'not-shown', 'swollen', 'thicker'] as const;
export type StopReason = (typeof stopReasons)[number];

/** All that may still be done at a mark after the first pass: pigment cannot be taken out. */
export type NextStep =
  | Readonly<{ do: 'add-here'; addMm: number }>
  | Readonly<{ do: 'stop'; because: StopReason }>
  | Readonly<{ do: 'read-again' }>;

/**
 * How far the pigment ends short of the approved outline (negative: past it), here and at the other edge at
 * the same place.
 */
export type EdgeGaps = Readonly<{ short: Interval; across?: Interval }>;

/**
 * The next step at one mark. Both edges off the same way by nearly the same: read again, level first. Past
 * the outline, or not shown to be short: stop. Short, but the other edge is past its outline: stop, the brow
 * would be thicker than approved. Short, but under `chaseFromMm` on swollen skin: stop, the skin will move
 * back. Otherwise add here, to the outline and no further.
 */
export function nextStep({ short, across }: EdgeGaps, skin: SkinState, chaseFromMm: number): NextStep {
  if (across && bothMoved(short, across)) return { do: 'read-again' };
  if (includesZero(short)) return { do: 'stop', because: 'not-shown' };
  if (short.value < 0) return { do: 'stop', because: 'over' };
  if (across && across.value < 0 && !includesZero(across)) return { do: 'stop', because: 'thicker' };
  if (skin === 'swollen' && short.value < chaseFromMm) return { do: 'stop', because: 'swollen' };
  return { do: 'add-here', addMm: short.value };
}
