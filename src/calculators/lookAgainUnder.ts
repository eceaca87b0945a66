import type { Lamp } from '#lib/colour/lamps.ts';

/** The lamp that daylight is compared with: the one chosen, and tungsten where daylight was chosen. */
export function lookAgainUnder(lamp: Lamp): Lamp {
  return lamp === 'D65' ? 'A' : lamp;
}
