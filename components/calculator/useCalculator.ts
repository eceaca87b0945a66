import type { PointMm } from '#lib/geometry/point.ts';
import { fromAddress, type Problem, startState, toAddress } from '#calculators/address.ts';
import { readWithin } from '#calculators/fields.ts';
import type { Calculator, Field, Refusal, State, Value } from '#calculators/spec.ts';
import { useEffect, useMemo, useState } from 'preact/hooks';

export type Axis = 'x' | 'y';

/** A text that was typed but refused: it stays in its box, the state stays as it was. */
type Draft = Readonly<{ text: string; refusal: Refusal }>;

/** One state for picture, numbers and sentence, with every way to change it. */
export type Desk<S extends State, R> = Readonly<{
  state: S;
  result: R;
  /** What is shown in a box: the refused text if there is one. `slot` is the key, or key.x and key.y for a mark. */
  draft: (slot: string) => Draft | undefined;
  /** A typed text for a number or choice field. */
  type: (name: keyof S & string, text: string) => void;
  /** A typed text for one of a mark's two numbers. */
  typeAxis: (name: keyof S & string, axis: Axis, text: string) => void;
  /** Moves a mark to a place, held inside its box and rounded to its step. */
  moveTo: (name: keyof S & string, point: PointMm) => void;
  reset: () => void;
  /** Parts of the address that were refused. */
  refused: readonly Problem[];
  /** A whole link to a page of this site that holds the state. */
  address: (path: string) => string;
}>;

export function isPoint(value: Value | undefined): value is PointMm {
  return typeof value === 'object';
}

/** Rounds to a count of decimals without leaving 0.30000000000000004 behind. */
export function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) || 0;
}

function held<V extends Value>({ control }: Field<V>, { xMm, yMm }: PointMm): PointMm | undefined {
  if (control.kind !== 'mark') return undefined;
  const into = (value: number, [lo, hi]: readonly [number, number]) => rounded(Math.min(hi, Math.max(lo, value)), control.decimals);
  return { xMm: into(xMm, control.x), yMm: into(yMm, control.y) };
}

/** The first render equals the server's: address and storage are read after mount. */
export function useCalculator<S extends State, R>(calculator: Calculator<S, R>): Desk<S, R> {
  const [state, setState] = useState(() => startState(calculator));
  const [drafts, setDrafts] = useState<Readonly<Record<string, Draft>>>({});
  const [refused, setRefused] = useState<readonly Problem[]>([]);

  useEffect(() => {
    const { state: given, refused: bad } = fromAddress(calculator, location.search);
    setState(given);
    setRefused(bad);
  }, [calculator]);

  const result = useMemo(() => calculator.solve(state), [calculator, state]);

  const clear = (slot: string) => setDrafts(({ [slot]: _, ...rest }) => rest);
  const refuse = (slot: string, text: string, refusal: Refusal) => setDrafts((all) => ({ ...all, [slot]: { text, refusal } }));
  const put = (name: keyof S & string, value: Value) => setState((old) => ({ ...old, [name]: value }));

  return {
    state,
    result,
    refused,
    draft: (slot) => drafts[slot],
    type: (name, text) => {
      const read = calculator.fields[name].read(text);
      if (!read.ok) return refuse(name, text, read.refusal);
      clear(name);
      put(name, read.value);
    },
    typeAxis: (name, axis, text) => {
      const { control } = calculator.fields[name];
      const point = state[name];
      if (control.kind !== 'mark' || !isPoint(point)) return;
      const [lo, hi] = control[axis];
      const read = readWithin(text, { unit: 'mm', lo, hi });
      if (!read.ok) return refuse(`${name}.${axis}`, text, read.refusal);
      clear(`${name}.${axis}`);
      put(name, axis === 'x' ? { ...point, xMm: read.value } : { ...point, yMm: read.value });
    },
    moveTo: (name, point) => {
      const place = held(calculator.fields[name], point);
      if (!place) return;
      clear(`${name}.x`);
      clear(`${name}.y`);
      put(name, place);
    },
    reset: () => {
      setState(startState(calculator));
      setDrafts({});
      setRefused([]);
    },
    address: (path) => {
      const query = toAddress(calculator, state);
      return `${location.origin}${path}${query ? `?${query}` : ''}`;
    },
  };
}
