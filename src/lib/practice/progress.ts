import { isIsoDay } from '../quantities/isoDay.ts';
import type { IsoDay } from '../quantities/isoDay.ts';
import { seedCount } from './itemSeed.ts';
import { rungs } from './ladder.ts';
import type { Rung } from './ladder.ts';

/** 2: every answer says which version of its exercise it answers. In 1 there was only the first. */
export const progressSchema = 2;

/**
 * One finished problem. Progress is nothing but a set of these, so two devices merge by union and nothing is
 * counted twice.
 * `version`: of the exercise, as it was then. `atMs`: the device's clock, for order only. `credit`: of the
 * first try. `tries` 0: the worked answer was opened instead.
 */
export type Answered = Readonly<{
  skill: string;
  version: number;
  seed: number;
  day: IsoDay;
  atMs: number;
  rung: Rung;
  credit: number;
  tries: number;
  hints: number;
  solved: boolean;
  slip?: string;
}>;

export type Progress = Readonly<{ schema: typeof progressSchema; answers: readonly Answered[] }>;

export const noProgress: Progress = { schema: progressSchema, answers: [] };

/** `dropped`: entries that could not be read. The caller keeps the original aside when it is not 0. */
export type ReadProgress =
  | Readonly<{ ok: true; progress: Progress; dropped: number }>
  | Readonly<{ ok: false; reason: 'newer-schema'; schema: number }>
  | Readonly<{ ok: false; reason: 'not-progress' }>;

/** True for a plain record; arrays and null are not. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isCount(value: unknown, most: number): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= most;
}

function isCode(value: unknown): value is string {
  return typeof value === 'string' && /^[a-z0-9-]{1,60}$/.test(value);
}

/** True for the number of a version: 1, 2, 3 and so on. */
function isVersion(value: unknown): value is number {
  return isCount(value, 999) && value > 0;
}

function readAnswered(value: unknown): Answered | undefined {
  if (!isObject(value)) return undefined;
  const { skill, version = 1, seed, day, atMs, credit, tries, hints, solved, slip } = value;
  const rung = rungs.find((name) => name === value['rung']);
  if (
    !isCode(skill) ||
    !isVersion(version) ||
    !isCount(seed, seedCount - 1) ||
    !isCount(atMs, Number.MAX_SAFE_INTEGER)
  )
    return undefined;
  if (typeof day !== 'string' || !isIsoDay(day) || rung === undefined || typeof solved !== 'boolean')
    return undefined;
  if (typeof credit !== 'number' || !(credit >= 0 && credit <= 1)) return undefined;
  if (!isCount(tries, 1000) || !isCount(hints, 100)) return undefined;
  if (slip !== undefined && !isCode(slip)) return undefined;
  return {
    skill,
    version,
    seed,
    day,
    atMs,
    rung,
    credit,
    tries,
    hints,
    solved,
    ...(slip === undefined ? {} : { slip }),
  };
}

/**
 * Reads an unknown value (from storage or a file) as progress. Total: never throws.
 * An answer without a version is of the first. A newer schema is not touched: the reader of newer data must
 * be newer code.
 */
export function readProgress(value: unknown): ReadProgress {
  if (!isObject(value) || !isCount(value['schema'], 1_000_000)) return { ok: false, reason: 'not-progress' };
  if (value['schema'] > progressSchema) return { ok: false, reason: 'newer-schema', schema: value['schema'] };
  const { answers } = value;
  if (value['schema'] === 0 || !Array.isArray(answers)) return { ok: false, reason: 'not-progress' };
  const read = answers.map(readAnswered).filter((answered) => answered !== undefined);
  const progress = mergeProgress(noProgress, { schema: progressSchema, answers: read });
  return { ok: true, progress, dropped: answers.length - read.length };
}

/** One writing for one answer, whatever the order of its keys was: the key of the union. */
function written(answered: Answered): string {
  const { atMs, skill, version, seed, day, rung, credit, tries, hints, solved, slip = '' } = answered;
  return [
    String(atMs).padStart(16, '0'),
    skill,
    version,
    seed,
    day,
    rung,
    credit,
    tries,
    hints,
    solved,
    slip,
  ].join(' ');
}

/**
 * The union of two sets of answers, oldest first. The order of the two does not matter, nor does merging
 * twice.
 */
export function mergeProgress(one: Progress, other: Progress): Progress {
  const byKey = new Map([...one.answers, ...other.answers].map((answered) => [written(answered), answered]));
  const keys = [...byKey.keys()].sort();
  const answers = keys.map((key) => byKey.get(key)).filter((answered) => answered !== undefined);
  return { schema: progressSchema, answers };
}

/** How many answers of `other` are not yet in `one`: what an import would add. */
export function newAnswers(one: Progress, other: Progress): number {
  return mergeProgress(one, other).answers.length - mergeProgress(one, noProgress).answers.length;
}
