import { midlineFromPairs } from './mapping/midlineFromPairs.ts';

/** Every skill by its id. */
export const skills = {
  'midline-from-pairs': midlineFromPairs,
} as const;

export type SkillId = keyof typeof skills;
