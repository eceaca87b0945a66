/** Answers by question; a question that is missing has not been asked. */
export type Answers<Q extends string = string> = Readonly<Partial<Record<Q, string | number | boolean>>>;

/** When a rule speaks. A condition on a question that was not asked is neither true nor false. */
export type Condition<Q extends string = string> =
  | Readonly<{ question: Q; is: string | boolean }>
  | Readonly<{ question: Q; atLeast: number }>
  | Readonly<{ question: Q; below: number }>
  | Readonly<{ all: readonly Condition<Q>[] }>
  | Readonly<{ any: readonly Condition<Q>[] }>
  | Readonly<{ not: Condition<Q> }>;

/** What a rule asks for, strongest first. */
export const outcomes = [
  'refuse',
  'physician',
  'wait',
  'ask',
  'measure-again',
  'leave-out',
  'tell',
  'leave-as-is',
] as const;
export type Outcome = (typeof outcomes)[number];

/** Where a rule holds. Rules of geometry hold anywhere; law does not. */
export type Jurisdiction = 'anywhere' | 'england' | 'european-union' | 'united-states';

export type Rule<Q extends string = string, F extends string = string> = Readonly<{
  id: string;
  when: Condition<Q>;
  outcome: Outcome;
  /** Facts the rule rests on. */
  facts: readonly F[];
  /** Facts that speak against it, or would set it elsewhere. */
  disputedBy: readonly F[];
  jurisdiction: Jurisdiction;
}>;
