import type { Unit } from '#lib/quantities/unit.ts';

export type Numbers = Readonly<Record<string, number>>;

/**
 * A worked example that lessons show by id. `run` is the library's own answer; src/words makes the steps
 * from the inputs and from what `run` returns. A test runs every one.
 */
export type Worked<I extends Numbers, O extends Numbers> = Readonly<{
  id: string;
  inputs: I;
  /** Every number the steps show, the answer among them as `answer`. */
  run: (inputs: I) => O & Readonly<{ answer: number }>;
  shown: Readonly<{ digits: number; unit: Unit }>;
  /** Ids of the facts it rests on. */
  facts: readonly string[];
}>;

/** A worked example with its numbers, whichever it is. */
export type AnyWorked = Readonly<{
  id: string;
  numbers: Numbers & Readonly<{ answer: number }>;
  facts: readonly string[];
}>;

/** Ties a worked example's inputs to its results, so that a map of many keeps its types. */
export function worked<I extends Numbers, O extends Numbers>(
  example: Worked<I, O>,
): Readonly<{ id: string; numbers: I & O & Readonly<{ answer: number }>; facts: readonly string[] }> {
  return {
    id: example.id,
    facts: example.facts,
    numbers: { ...example.inputs, ...example.run(example.inputs) },
  };
}
