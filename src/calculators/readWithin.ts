import { readDecimal } from '#lib/quantities/decimal.ts';
import type { Limits, Read } from './spec.ts';

/** Reads one number inside limits; the decimal sign may be a point or a comma. */
export function readWithin(text: string, { unit, lo, hi }: Limits): Read<number> {
  const read = readDecimal(text);
  if (!read.ok) {
    const code = read.reason === 'ambiguous' || read.reason === 'empty' ? read.reason : 'not-a-number';
    return { ok: false, refusal: { code, lo, hi, unit } };
  }
  if (read.value < lo || read.value > hi)
    return { ok: false, refusal: { code: 'out-of-range', lo, hi, unit } };
  return { ok: true, value: read.value };
}
