import type { Repeat } from '#lib/mapping/uncertainty/technicalError.ts';
import type { Field, PairLimits } from './spec.ts';

/** A list of pairs of readings. The state holds it as it stands in an address: "12.3_12.6*41_40.9". */
export function pairsField(key: string, start: string, limits: PairLimits): Field<string> {
  return {
    key,
    start,
    read: (text, { readPairs }) => readPairs(text, limits),
    write: (value) => value,
    kept: 'address',
    control: { kind: 'pairs', ...limits },
  };
}

/** The readings of a list that was read before. */
export function repeatsOf(kept: string): readonly Repeat[] {
  return kept.split('*').map((pair) => {
    const [firstMm = 0, secondMm = 0] = pair.split('_').map(Number);
    return { firstMm, secondMm };
  });
}
