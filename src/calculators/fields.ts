import type { PointMm } from '#lib/geometry/point.ts';
import type { Box, Field, Limits } from './spec.ts';

/** A number with a unit. */
export function numberField(
  key: string,
  start: number,
  limits: Limits & Readonly<{ step: number; decimals: number }>,
): Field<number> {
  return {
    key,
    start,
    read: (text, { readWithin }) => readWithin(text, limits),
    write: String,
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
      return found === undefined
        ? { ok: false, refusal: { code: 'unknown-choice' } }
        : { ok: true, value: found };
    },
    write: (value) => value,
    kept: 'address',
    control: { kind: 'choice', options },
  };
}

/** A mark on the picture, millimetres, written "across_up" in an address. */
export function markField(key: string, start: PointMm, box: Box): Field<PointMm> {
  return {
    key,
    start,
    read: (text, { readPoint }) => readPoint(text, box),
    write: ({ xMm, yMm }) => `${xMm}_${yMm}`,
    kept: 'address',
    control: { kind: 'mark', ...box, step: 0.1, decimals: 1 },
  };
}
