import type { Outcome } from '#lib/evidence/rule.ts';

/** What an outcome asks for. `none` is never "safe" or "all is well". */
export const outcomeWords = {
  refuse: 'Do not use it',
  physician: 'A doctor first',
  wait: 'Wait',
  ask: 'Ask first',
  'measure-again': 'Measure again',
  'leave-out': 'Weigh it down, and say so',
  tell: 'Tell the client',
  'leave-as-is': 'Leave it as it is',
  none: 'No rule speaks',
} as const satisfies Readonly<Record<Outcome | 'none', string>>;

/** The line under a verdict when questions were not asked. */
export function unaskedText(count: number): string {
  if (count === 0) return 'Nothing is left to ask for these rules.';
  return count === 1
    ? 'One question was not asked. It can still change the verdict.'
    : `${count} questions were not asked. They can still change the verdict.`;
}
