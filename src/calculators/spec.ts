import type { PointMm } from '#lib/geometry/point.ts';
import type { Unit } from '#lib/quantities/unit.ts';

/** Why a text was refused; src/words/refusal.ts makes the sentence. */
export type Refusal = Readonly<{
  code: 'empty' | 'not-a-number' | 'ambiguous' | 'out-of-range' | 'unknown-choice' | 'not-a-point' | 'unknown-field';
  lo?: number;
  hi?: number;
  unit?: Unit;
}>;

export type Read<T> = Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; refusal: Refusal }>;

/** How a field is shown and moved. A mark is a point on the picture. */
export type Control =
  | Readonly<{ kind: 'number'; unit: Unit; lo: number; hi: number; step: number; decimals: number }>
  | Readonly<{ kind: 'choice'; options: readonly string[] }>
  | Readonly<{ kind: 'mark'; x: readonly [number, number]; y: readonly [number, number]; step: number; decimals: number }>;

/** One input. `kept: 'memory'` never reaches an address, a file or storage. */
export type Field<T> = Readonly<{
  key: string;
  start: T;
  read: (text: string) => Read<T>;
  write: (value: T) => string;
  kept: 'address' | 'memory';
  control: Control;
}>;

export type Value = number | string | PointMm;
export type State = Readonly<Record<string, Value>>;

/** A calculator: inputs and the sum. No picture, no words. */
export type Calculator<S extends State, R> = Readonly<{
  id: string;
  fields: { readonly [K in keyof S]: Field<S[K]> };
  solve: (state: S) => R;
  /** Ids of the facts the result rests on. */
  facts: readonly string[];
}>;
