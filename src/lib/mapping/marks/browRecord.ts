import type { BrowMark } from './markSet.ts';

/** One value for each brow mark. */
export type BrowRecord<T> = Readonly<Record<BrowMark, T>>;

/** Makes the same thing for each of the five brow marks. */
export function forBrowMarks<T>(make: (mark: BrowMark) => T): BrowRecord<T> {
  return {
    frontLower: make('frontLower'),
    frontTop: make('frontTop'),
    archTop: make('archTop'),
    archLower: make('archLower'),
    tail: make('tail'),
  };
}
