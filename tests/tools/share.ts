import { drawFrom, drawWhole, seedFrom } from '#lib/quantities/seed.ts';

// Where the whole takes too long for every run, a run takes a share that turns with a seed; `npm run deep`
// takes the whole.

/** True where everything is to be looked at. */
export const isWhole = process.env['TAUTLINE_WHOLE'] === '1';

/**
 * What turns the shares: TAUTLINE_SEED, or the days since 1970. Both test configs put it into the
 * environment, so that every worker of a run has the same one.
 */
export const seed = Number(process.env['TAUTLINE_SEED'] ?? Math.floor(Date.now() / 86_400_000));
if (!Number.isSafeInteger(seed))
  throw new Error(`TAUTLINE_SEED is a whole number, not ${process.env['TAUTLINE_SEED']}.`);

/** For titles: how to repeat what a share found. */
export const bySeed = isWhole ? '' : ` (TAUTLINE_SEED=${seed})`;

/**
 * One of so many in a list, at places that the seed turns. `what` keeps the lists of different tests apart.
 */
export function oneIn<T>(many: number, list: readonly T[], what: string): readonly T[] {
  const from = drawWhole(drawFrom(seedFrom(seed, what)), 0, many - 1);
  return list.filter((_, i) => i % many === from);
}

/** One of a list, drawn by the seed; undefined of an empty one. */
export const oneOf = <T>(list: readonly T[], what: string): T | undefined =>
  list[drawWhole(drawFrom(seedFrom(seed, what)), 0, list.length - 1)];

/** One of each kind, and one in ten of all, each by the seed; the whole where that is asked for. */
export function oneOfEach<T>(list: readonly T[], kindOf: (item: T) => string, what: string): readonly T[] {
  if (isWhole) return list;
  const kinds = new Set(list.map(kindOf));
  const chosen = new Set([
    ...oneIn(10, list, what),
    ...[...kinds].flatMap(
      (kind) =>
        oneOf(
          list.filter((item) => kindOf(item) === kind),
          `${what} ${kind}`,
        ) ?? [],
    ),
  ]);
  return list.filter((item) => chosen.has(item));
}

/**
 * The part of a list that the nth of so many takes; which part, the seed turns. Together they take all of it;
 * the whole gives each all.
 */
export const partOf = <T>(list: readonly T[], nth: number, many: number): readonly T[] =>
  isWhole ? list : list.filter((_, i) => (((i + nth + seed) % many) + many) % many === 0);

/** Whether the nth of so many has its turn in this run; each has it in the whole. */
export const isTurn = (nth: number, many: number): boolean =>
  isWhole || (((nth + seed) % many) + many) % many === 0;
