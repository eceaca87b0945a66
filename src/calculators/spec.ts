import type { PointMm } from '#lib/geometry/point.ts';
import type { Unit } from '#lib/quantities/unit.ts';

/** Why a text was refused; src/words/refusal.ts makes the sentence. */
export type Refusal = Readonly<{
  code:
    | 'empty'
    | 'not-a-number'
    | 'ambiguous'
    | 'out-of-range'
    | 'unknown-choice'
    | 'not-a-point'
    | 'unknown-field'
    | 'never-kept'
    | 'given-twice'
    | 'not-pairs'
    | 'too-many-pairs';
  lo?: number;
  hi?: number;
  unit?: Unit;
  /** The lines of a list that were not read, each with its number as the reader counts it. */
  lines?: readonly Readonly<{
    line: number;
    code: 'not-two' | 'not-a-number' | 'ambiguous' | 'out-of-range';
  }>[];
}>;

export type Read<T> = Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; refusal: Refusal }>;

/** A number's unit and the ends of what is accepted. */
export type Limits = Readonly<{ unit: Unit; lo: number; hi: number }>;
/** Where a mark may lie, millimetres. */
export type Box = Readonly<{ x: readonly [number, number]; y: readonly [number, number] }>;

/** What a list of pairs may hold: at most so many lines, each number inside the limits. */
export type PairLimits = Limits & Readonly<{ most: number }>;

/** How a field is shown and moved. A mark is a point on the picture. */
export type Control =
  | (Limits & Readonly<{ kind: 'number'; step: number; decimals: number }>)
  | Readonly<{ kind: 'choice'; options: readonly string[] }>
  | (PairLimits & Readonly<{ kind: 'pairs' }>)
  | (Box & Readonly<{ kind: 'mark'; step: number; decimals: number }>);

/** See parsers.ts. */
export type Parsers = Readonly<{
  readWithin: (text: string, limits: Limits) => Read<number>;
  readPoint: (text: string, box: Box) => Read<PointMm>;
  readPairs: (text: string, limits: PairLimits) => Read<string>;
}>;

/**
 * One input. `kept: 'memory'` never reaches an address, a file or storage. `startBefore`: where the start has
 * changed, what it was in links that do not hold this key; newer links always hold it.
 */
export type Field<T> = Readonly<{
  key: string;
  start: T;
  startBefore?: T;
  read: (text: string, parsers: Parsers) => Read<T>;
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
}>;
