const leastAlike = 3;

/** The shortest beginning of a word that names anything. */
const leastTyped = 4;

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

/**
 * True when what was asked for is one of the phrases or holds one, as "she passed out" holds "passed out"; or
 * is the beginning of one, a word at least, or half a word where that is all: "pigment" alone does not ask
 * for "pigment in eye".
 */
export function namesOneOf(asked: string, phrases: readonly string[]): boolean {
  const typed = wordsOf(asked).join(' ');
  return phrases
    .map((phrase) => wordsOf(phrase).join(' '))
    .some((phrase) => {
      if (phrase === '') return false;
      const isLongEnough = typed.includes(' ') || (!phrase.includes(' ') && typed.length >= leastTyped);
      return ` ${typed} `.includes(` ${phrase} `) || (isLongEnough && phrase.startsWith(typed));
    });
}
