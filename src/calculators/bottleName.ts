/** Letters of a bottle's name at most. */
export const longestBottleName = 40;

/**
 * A typed name as it is kept: nothing that cannot be seen, single spaces, at most so many letters. Undefined
 * where nothing is left.
 */
export function bottleName(text: string): string | undefined {
  const seen = text
    .slice(0, 400)
    .replace(/[\p{C}\p{Z}\s]+/gu, ' ')
    .trim();
  const letters = [...seen].slice(0, longestBottleName).join('').trim();
  return letters === '' ? undefined : letters;
}
