const leastAlike = 3;

/** The words of a text without accents, case and punctuation: "Šidák (1967)" gives "sidak" and "1967". */
const wordsOf = (text: string): readonly string[] =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/**
 * True when a word that was asked for begins as one of the found words does: three letters alike, or the
 * whole of a shorter word.
 */
export function isNear(asked: string, found: string): boolean {
  const begins = (word: string) => word.slice(0, leastAlike);
  const known = wordsOf(found);
  return wordsOf(asked).some((word) => known.some((other) => other.startsWith(begins(word))));
}
