/** Said where something that was typed earlier today is kept, but belongs to an earlier form of the page. */
export const typedWords = {
  calculatorLost:
    'Some of what you typed here earlier today is not shown: this calculator has changed since then.',
  problemLost: 'What you typed here earlier today is not shown: this exercise has changed since then.',
} as const;
