import type { habitFacts } from '#lib/mapping/facts/habits.ts';

/** What each fact about how artists map is, in a few plain words. */
export const habitsFactNames = {
  'fronts-equally-far': 'Fronts equally far from the midline at the bridge',
  'taut-thread-levels': 'Levels checked with a taut thread',
  'one-side-lower': 'One side commonly stands lower',
  'measure-again-eyes-closed': 'Measure again with the eyes closed',
  'upright-to-draw': 'Map upright',
  'client-sees-in-mirror': 'The client says yes in the mirror',
} as const satisfies Readonly<Record<keyof typeof habitFacts, string>>;
