import type { PointMm } from '#lib/geometry/point.ts';
import { parsers } from '#calculators/parsers.ts';
import type { Calculator, Read, State, Value } from '#calculators/spec.ts';
import { refusalSentence } from '#words/refusal.ts';

/** A text as it was read, or what is wrong with it, as a sentence. */
export type Told<T> =
  | Readonly<{ ok: true; value: T; sentence?: never }>
  | Readonly<{ ok: false; sentence: string }>;
function tell<T, U>(label: string, read: Read<T>, put: (value: T) => U): Told<U> {
  return read.ok
    ? { ok: true, value: put(read.value) }
    : { ok: false, sentence: refusalSentence(label, read.refusal) };
}

/** As much of a calculator as its texts need. */
export type Fields<S extends State> = Pick<Calculator<S, unknown>, 'fields'>;

/** The field of a slot, which is a field's name, or name.x and name.y for the two numbers of a mark. */
export function fieldOf<S extends State>(
  { fields }: Fields<S>,
  slot: string,
): (keyof S & string) | undefined {
  const name = slot.replace(/\.[xy]$/, '');
  for (const key in fields) if (key === name) return key;
  return undefined;
}

const isPoint = (value: Value | undefined): value is PointMm => typeof value === 'object';

/** Reads a typed text for a slot, as a change of the state. Nothing where there is no such slot. */
export function readSlot<S extends State>(
  calculator: Fields<S>,
  slot: string,
  text: string,
  nameOf: (name: string) => string,
): Told<(state: S) => S> | undefined {
  const name = fieldOf(calculator, slot);
  if (name === undefined) return undefined;
  const { control, read } = calculator.fields[name];
  if (slot === name)
    return tell(nameOf(name), read(text, parsers), (value) => (state) => ({ ...state, [name]: value }));
  if (control.kind !== 'mark') return undefined;
  const isAcross = slot.endsWith('.x');
  const [lo, hi] = control[isAcross ? 'x' : 'y'];
  return tell(
    isAcross ? 'Across' : 'Up',
    parsers.readWithin(text, { unit: 'mm', lo, hi }),
    (mm) => (state) => {
      const point: Value | undefined = state[name];
      return isPoint(point) ? { ...state, [name]: { ...point, [isAcross ? 'xMm' : 'yMm']: mm } } : state;
    },
  );
}
