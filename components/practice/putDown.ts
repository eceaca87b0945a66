import type { Answered, Progress } from '#lib/practice/progress.ts';

/** Every answer that is put down has a key of its own, so that two tabs never write over each other. */
export const putDownPrefix = 'tautline-put-down ';
export const putDownKey = ({ atMs, skill, seed }: Answered): string =>
  `${putDownPrefix}${atMs} ${skill} ${seed}`;

/**
 * Puts an answer down before this call returns. The store is fetched and writes later, and a page that is
 * left before then takes the writing with it: the next page that opens the store finds the answer here. Where
 * the browser keeps nothing at once, only the store is left.
 */
export function putDown(answered: Answered): void {
  try {
    localStorage.setItem(
      putDownKey(answered),
      JSON.stringify({ schema: 2, answers: [answered] } satisfies Progress),
    );
  } catch {
    // Denied or full: the store tries its other places and says so.
  }
}
