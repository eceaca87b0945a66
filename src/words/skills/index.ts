import { midlineFromPairsWords } from './midlineFromPairs.ts';

/** Name, one sentence and strand of every skill, by id, in teaching order: for lists. */
export const skillList = [
  { id: 'midline-from-pairs', strand: 'Mapping', name: midlineFromPairsWords.name, summary: midlineFromPairsWords.summary },
] as const;
