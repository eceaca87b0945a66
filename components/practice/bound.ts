import type { ComponentType } from 'preact';
import type { Rung } from '#lib/practice/ladder.ts';
import type { Skill } from '#skills/skill.ts';
import type { BeadState } from '#words/practice.ts';

/** What a picture is given: the numbers, and after marking the learner's answer beside the right one. */
export type PictureProps<G> = Readonly<{
  given: G;
  at: string;
  yours?: number | string;
  right?: number | string;
}>;

/** One skill, which knows its sentences, and its picture: everything a problem on the page needs. */
export type Bound<G> = Readonly<{
  skill: Skill<G>;
  Picture: ComponentType<PictureProps<G>>;
}>;

/** What a page decides about a problem. `at` is unique on the page. */
export type ProblemSettings = Readonly<{
  at: string;
  level: 1 | 2 | 3;
  /** The practice page's own problem: reads ?seed=, remembers the rung, counts a set on beads. */
  main?: boolean;
  /** The first item of a lesson's problem, 0 to 999, where the lesson wants a certain case. */
  seed?: number;
  /** A set of mixed skills decides these: which item, on which rung, and what happens after it. */
  inSet?: Readonly<{
    index: number;
    isFirst: boolean;
    rung: Rung;
    onDone: (bead: BeadState) => void;
    onNext: () => void;
  }>;
}>;
