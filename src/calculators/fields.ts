import type { PointMm } from '#lib/geometry/point.ts';
import { readDecimal } from '#lib/quantities/decimal.ts';
import type { Unit } from '#lib/quantities/unit.ts';
import type { Field, Read } from './spec.ts';

type Limits = Readonly<{ unit: Unit; lo: number; hi: number; step: number; decimals: number }>;

/** Reads one number inside limits; the decimal sign may be a point or a comma. */
export function readWithin(text: string, { unit, lo, hi }: Pick<Limits, 'unit' | 'lo' | 'hi'>): Read<number> {
  const read = readDecimal(text);
  if (!read.ok) {
    const code = read.reason === 'ambiguous' || read.reason === 'empty' ? read.reason : 'not-a-number';
    return { ok: false, refusal: { code, lo, hi, unit } };
  }
  if (read.value < lo || read.value > hi) return { ok: false, refusal: { code: 'out-of-range', lo, hi, unit } };
  return { ok: true, value: read.value };
}

/** A number with a unit. */
export function numberField(key: string, start: number, limits: Limits): Field<number> {
  return {
    key,
    start,
    read: (text) => readWithin(text, limits),
    write: (value) => String(value),
    kept: 'address',
    control: { kind: 'number', ...limits },
  };
}

/** One of a few named answers. */
export function choiceField<T extends string>(key: string, start: T, options: readonly T[]): Field<T> {
  return {
    key,
    start,
    read: (text) => {
      const found = options.find((option) => option === text);
      return found === undefined ? { ok: false, refusal: { code: 'unknown-choice' } } : { ok: true, value: found };
    },
    write: (value) => value,
    kept: 'address',
    control: { kind: 'choice', options },
  };
}

type Box = Readonly<{ x: readonly [number, number]; y: readonly [number, number] }>;

/** A mark on the picture, millimetres, written "across_up" in an address. */
export function markField(key: string, start: PointMm, box: Box): Field<PointMm> {
  return {
    key,
    start,
    read: (text) => {
      const [across, up, rest] = text.split('_');
      if (across === undefined || up === undefined || rest !== undefined) return { ok: false, refusal: { code: 'not-a-point' } };
      const x = readWithin(across, { unit: 'mm', lo: box.x[0], hi: box.x[1] });
      if (!x.ok) return x;
      const y = readWithin(up, { unit: 'mm', lo: box.y[0], hi: box.y[1] });
      return y.ok ? { ok: true, value: { xMm: x.value, yMm: y.value } } : y;
    },
    write: ({ xMm, yMm }) => `${xMm}_${yMm}`,
    kept: 'address',
    control: { kind: 'mark', ...box, step: 0.1, decimals: 1 },
  };
}
