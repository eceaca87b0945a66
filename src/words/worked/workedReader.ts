import { fixed } from '../number.ts';

/** A worked example in words: its heading, its steps, the answer line and what to see next. */
export type WorkedWords = Readonly<{
  title: string;
  steps: readonly string[];
  answer: string;
  after: string;
  /** Whose numbers they are, where they were measured and not invented. */
  whose?: string;
}>;

export type WorkedNumbers = Readonly<Record<string, number>>;

/** Reads the numbers of a worked example by name, each with so many decimals. */
export function reader(numbers: WorkedNumbers) {
  return (name: string, digits = 1): string => {
    const value = numbers[name];
    if (value === undefined) throw new Error(`The worked example has no number called "${name}".`);
    return fixed(value, digits);
  };
}
