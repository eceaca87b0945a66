import type { Condition } from './rule.ts';

/** Every question a condition asks, in its order, each once. */
export function questionsOf<Q extends string>(condition: Condition<Q>): readonly Q[] {
  if ('question' in condition) return [condition.question];
  if ('not' in condition) return questionsOf(condition.not);
  const parts = 'all' in condition ? condition.all : condition.any;
  return [...new Set(parts.flatMap((part) => questionsOf(part)))];
}
