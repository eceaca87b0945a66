const mostListed = 30;

/**
 * The lessons around one of them, for the list beside it: a page must not grow with its strand. `lessons` in
 * their order.
 */
export function lessonsAround<L extends Readonly<{ id: string }>>(
  lessons: readonly L[],
  here: string,
): readonly L[] {
  const before = lessons.findIndex(({ id }) => id === here) - mostListed / 2;
  const start = Math.max(0, Math.min(before, lessons.length - mostListed));
  return lessons.slice(start, start + mostListed);
}
