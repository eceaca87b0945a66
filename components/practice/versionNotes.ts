import { linkVersion } from '#lib/practice/linkVersion.ts';
import { otherVersions } from '#lib/practice/otherVersions.ts';
import type { Progress } from '#lib/practice/progress.ts';
import type { Versioned } from '#lib/practice/standing.ts';
import { linkVersionWords, otherVersionsWords } from '#words/versions.ts';

// Needed only beside what is kept, or for a link that names a version: fetched then.

/** What is kept of other versions of a skill, in words. */
export const keptNote = (progress: Progress, skill: Versioned): string =>
  otherVersionsWords(otherVersions(progress, skill));

/** What a link's ?version= says against the exercise of today, in words. */
export const linkNote = (text: string | null, today: number): string =>
  linkVersionWords(linkVersion(text, today));
