import type { ClosedRange } from '#lib/quantities/closedRange.ts';
import type { Unit } from '#lib/quantities/unit.ts';
import type { ProblemWords } from '#words/skills/problemWords.ts';

/** The right answer of a problem: a number inside one closed range, or one option of several. */
export type Answer =
  | Readonly<{ kind: 'number'; range: ClosedRange; exact: number; unit: Unit }>
  | Readonly<{ kind: 'choice'; correct: string; options: readonly string[] }>;

/** A named wrong method: what it would answer, and the share of the marks it earns (0 to 1). */
export type Slip<G> = Readonly<{ id: string; value: (given: G) => number | string; credit: number }>;

/** One step of the worked answer: a code and the numbers it speaks of; src/words makes the sentence. */
export type Step = Readonly<{ id: string; values: Readonly<Record<string, number | string>> }>;

/**
 * A seeded problem. Everything follows from the seed; its sentences stand in src/words, its picture in
 * components.
 */
export type Skill<G> = Readonly<{
  id: string;
  /**
   * 1 at first. It counts up when the exercise is made anew, that is when a seed asks something else or another answer is
   * right: what was answered before then stays with the version that it answers.
   */
  version: number;
  /** Every sentence of it: the type of the givens holds both together. */
  words: ProblemWords<G>;
  given: (seed: number) => G;
  answer: (given: G) => Answer;
  slips: readonly Slip<G>[];
  steps: (given: G) => readonly Step[];
  /** Ids of the facts the problem rests on. */
  facts: readonly string[];
}>;
