const words = [
  'nought',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
] as const;

/** A whole number from 0 to 20 as a word; an error for any other. */
export function spelt(value: number): string {
  const word = words[value];
  if (word === undefined) throw new Error(`${value} has no word: only whole numbers from 0 to 20 are spelt.`);
  return word;
}
