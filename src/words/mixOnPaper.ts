import type { Lamp } from '#lib/colour/spectrum/lamps.ts';
import { dropsOnPaper, lampWords, skinOnPaper } from './mixByDrops.ts';

type State = Parameters<typeof skinOnPaper>[0] & Readonly<{ dose: number; lamp: Lamp }>;

/** What was mixed and for which skin, for paper: there the fields are left out. */
export function mixOnPaper(drops: Parameters<typeof dropsOnPaper>[0], state: State): string {
  return `Drops: ${dropsOnPaper(drops)}. Dose ${state.dose}. ${skinOnPaper(state)} Seen under ${lampWords[state.lamp]}.`;
}
