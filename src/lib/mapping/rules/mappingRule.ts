import type { Rule } from '../../evidence/rule.ts';
import type { MappingFactId } from '../facts.ts';
import type { MappingQuestion } from './questions.ts';

export type MappingRule = Rule<MappingQuestion, MappingFactId>;

/** Where a rule holds when no law or place limits it. */
export const anywhere = { jurisdiction: 'anywhere' } as const;
