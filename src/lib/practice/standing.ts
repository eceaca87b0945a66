import { nextRung } from './ladder.ts';
import type { Outcome, Rung } from './ladder.ts';
import type { Answered, Progress } from './progress.ts';
import { nextReview } from './schedule.ts';
import type { Review } from './schedule.ts';

/** Of a skill: which it is, and its version today. */
export type Versioned = Readonly<{ id: string; version: number }>;

/** Where a learner stands with one skill. `right`: problems solved, with or without help. */
export type Standing = Readonly<{ rung: Rung; done: number; right: number; review?: Review }>;

function outcomeOf({ credit, hints, solved }: Answered): Outcome {
  if (solved && credit === 1 && hints === 0) return 'clean';
  return solved ? 'helped' : 'wrong';
}

/**
 * Folds the answers of one skill, in its version of today, oldest first, into a standing. Reviews begin with
 * the first clean answer on an unaided rung. `entry` is where the ladder starts: `worked` for a beginner,
 * `bare` for someone experienced.
 */
export function standingIn(
  progress: Progress,
  { id, version }: Versioned,
  entry: Rung = 'last-blank',
): Standing {
  let standing: Standing = { rung: entry, done: 0, right: 0 };
  for (const answered of progress.answers) {
    if (answered.skill !== id || answered.version !== version) continue;
    const outcome = outcomeOf(answered);
    const isUnaided = answered.rung === 'bare' || answered.rung === 'mixed' || answered.rung === 'review';
    const begins = standing.review !== undefined || outcome === 'clean';
    const review =
      isUnaided && begins ? nextReview(standing.review, outcome === 'clean', answered.day) : standing.review;
    standing = {
      rung: nextRung(answered.rung, outcome),
      done: standing.done + 1,
      right: standing.right + (answered.solved ? 1 : 0),
      ...(review ? { review } : {}),
    };
  }
  return standing;
}
