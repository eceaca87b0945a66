/** Said of what was typed earlier today: what of it is not shown, and why. */
export const typedWords = {
  calculatorLost:
    'Some of what you typed here earlier today is not shown: this calculator has changed since then.',
  problemLost: 'What you typed here earlier today is not shown: this exercise has changed since then.',
  /** An answer that is never kept, beside numbers that were. */
  askedAnew: (name: string): string => `${name}: this is never kept, so it is asked anew. Answer it again.`,
} as const;
