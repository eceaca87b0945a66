import type { practiceFacts } from '#lib/practice/facts.ts';

/** What each fact about practising and learning is, in a few plain words. */
export const practiceFactNames = {
  'worked-examples-help': 'Effect of worked examples',
  'beginners-need-help': 'Effect of more help, for beginners',
  'experts-need-less': 'Effect of more help, for the experienced',
  'mix-what-is-seen': 'Effect of mixing what is judged by eye',
  'mix-sums': 'Effect of mixing sums',
  'keep-words-together': 'Effect of mixing words',
  'space-practice-out': 'Effect of spreading practice over days',
  'growing-gaps-no-better': 'Effect of growing gaps against even gaps',
  'say-what-went-wrong': 'Effect of feedback that explains',
  'right-or-wrong-only': 'Effect of feedback that only says right or wrong',
  'right-answer-only': 'Effect of feedback that only gives the answer',
  'first-review-days': 'Days until the first review',
  'last-review-days': 'Days until the last review',
} as const satisfies Readonly<Record<keyof typeof practiceFacts, string>>;
