import type { lampFacts } from '#lib/colour/facts/lamps.ts';

/** What each fact about lamps is, in a few plain words. */
export const colourLampsFactNames = {
  'tungsten-kelvin': 'Temperature of the tungsten lamp (A)',
  'tungsten-adds-to-skin': 'What a tungsten lamp adds to the a* of one example skin',
  'faces-under-lamps-people': 'Women whose faces were compared under many lamps',
  'lamps-compared': 'Lamps in that comparison',
  'lamp-moves-difference': 'By how much a difference between forehead and cheek varied with the lamp',
  'judging-light-least-lx': 'Light where paints are compared, at least',
  'judging-light-most-lx': 'Light where paints are compared, at most',
} as const satisfies Readonly<Record<keyof typeof lampFacts, string>>;
