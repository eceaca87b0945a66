import type { colourHabits } from '#lib/colour/facts/habits.ts';

/** What each fact about how artists read skin is, in a few plain words. */
export const colourHabitsFactNames = {
  'read-skin-untouched': 'The skin is read before it is touched',
} as const satisfies Readonly<Record<keyof typeof colourHabits, string>>;
