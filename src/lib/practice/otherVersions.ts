import type { Progress } from './progress.ts';
import type { Versioned } from './standing.ts';

/** How many answers are kept of versions before and after the skill's own of today. They count for none of its numbers. */
export type OtherVersions = Readonly<{ earlier: number; later: number }>;

export function otherVersions(progress: Progress, { id, version }: Versioned): OtherVersions {
  const versions = progress.answers.filter(({ skill }) => skill === id).map((answered) => answered.version);
  return {
    earlier: versions.filter((one) => one < version).length,
    later: versions.filter((one) => one > version).length,
  };
}
