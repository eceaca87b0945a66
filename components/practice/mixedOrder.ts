import type { SkillId } from '#skills/index.ts';
import { isAsked } from './isAsked.ts';

/** What a first set asks, so that it changes in kind from question to question; the first is on the page from the start. */
const firstSet: readonly SkillId[] = [
  'which-mark-not-to-trust',
  'change-nothing',
  'midline-from-pairs',
  'real-or-not',
  'own-technical-error',
  'after-the-first-pass',
];

/** The skills that mixed sets ask, in the order of a first set; the others follow as they are taught. */
export const mixedOrder = (taught: readonly string[]): readonly string[] =>
  [...new Set([...firstSet, ...taught])].filter(isAsked);
