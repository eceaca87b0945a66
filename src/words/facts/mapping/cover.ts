import type { coverFacts, coverHabits } from '#lib/mapping/facts/cover.ts';

/** What each fact about covering an old shape is, in a few plain words. */
export const coverFactNames = {
  'cover-margin-factor': 'Factor of the margin: one edge in twenty lies further out',
  'old-brow-thickness-mm': 'Thickness of old work to work the growth out on',
  'margin-adds-least-mm': 'What the margin adds to a brow at a refresh, careful readings',
  'margin-adds-most-mm': 'What the margin adds to a brow at a refresh, rough readings',
  'margin-adds-least-share': 'The same as a share of the old thickness, careful readings',
  'margin-adds-most-share': 'The same as a share of the old thickness, rough readings',
  'leave-below-mm': 'A move too small to be drawn',
  'margin-taper-mm': 'Last part of the tail, over which the margin shrinks to nothing',
  'lower-raised-or-higher-lowered': 'Which side is moved',
  'lighten-what-does-not-fit': 'Old work that does not fit',
} as const satisfies Readonly<Record<keyof typeof coverFacts | keyof typeof coverHabits, string>>;
