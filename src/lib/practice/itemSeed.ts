import { seedFrom } from '../quantities/seed.ts';

/** Seeds 0 to 999 are offered, because every one of them is tested for every skill. */
export const seedCount = 1000;

/** The seed of one item. It depends on these four alone, never on what was answered before it. */
export function itemSeed(assignment: string, learner: string, skill: string, index: number): number {
  return seedFrom(assignment, learner, skill, index) % seedCount;
}

/** Reads a seed from an address: a whole number from 0 to 999, else undefined. */
export function readSeed(text: string | null): number | undefined {
  return text !== null && /^\d{1,3}$/.test(text) ? Number(text) : undefined;
}
