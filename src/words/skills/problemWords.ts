/** What is said about one wrong answer: the slip is named first. */
export type Feedback = Readonly<{ title: string; text: string }>;

/** The values a step speaks of. */
export type StepValues = Readonly<Record<string, number | string>>;

/**
 * One step of the worked answer: what to do, without numbers (a hint), and the same done with the numbers.
 */
export type StepWords = Readonly<{ hint: string; done: (values: StepValues) => string }>;

/** The numbers of a problem as a table: first cell of a row is its head. */
export type GivenTable = Readonly<{
  caption: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
}>;

/**
 * Every sentence of one skill. `reply` is the learner's answer as it was read: "19.5 mm", or the option's own
 * words.
 */
export type ProblemWords<G> = Readonly<{
  name: string;
  summary: string;
  question: (given: G) => string;
  givens: (given: G) => readonly string[];
  table?: (given: G) => GivenTable;
  label: string;
  option: (code: string, given: G) => string;
  steps: Readonly<Record<string, StepWords>>;
  right: (given: G, reply: string) => string;
  slips: Readonly<Record<string, (given: G, reply: string) => Feedback>>;
  /** For an answer that no named method gives. */
  other: (given: G, reply: string) => Feedback;
}>;
