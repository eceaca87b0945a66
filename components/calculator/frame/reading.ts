import { toAddress } from '#calculators/address.ts';
import { parsers } from '#calculators/parsers.ts';
import type { Box, Calculator, Field, Limits, Read, State } from '#calculators/spec.ts';
import { refusalSentence } from '#words/refusal.ts';
import { fromLink } from './RefusedParts.tsx';

/**
 * What is needed once something is typed, linked or copied; fetched then, so that a page that is only read
 * stays small.
 */
export { fromLink };

/** A text as it was read, or what is wrong with it, as a sentence. */
export type Told<T> =
  | Readonly<{ ok: true; value: T; sentence?: never }>
  | Readonly<{ ok: false; sentence: string }>;
function tell<T>(label: string, read: Read<T>): Told<T> {
  return read.ok ? read : { ok: false, sentence: refusalSentence(label, read.refusal) };
}

/** A typed text for a number or choice field. */
export function readField<T>(field: Field<T>, label: string, text: string): Told<T> {
  return tell(label, field.read(text, parsers));
}

/** A number that was moved beyond its field's limits. */
export const readNumber = (
  control: Limits & Readonly<{ decimals: number }>,
  label: string,
  value: number,
): Told<number> => tell(label, parsers.readWithin(value.toFixed(control.decimals), control));

/** A typed text for one of a mark's two numbers. */
export function readAxis(box: Box, axis: 'x' | 'y', text: string): Told<number> {
  const [lo, hi] = box[axis];
  return tell(axis === 'x' ? 'Across' : 'Up', parsers.readWithin(text, { unit: 'mm', lo, hi }));
}

/** As much of a calculator as its address needs. */
type Kept<S extends State> = Pick<Calculator<S, unknown>, 'fields'>;

/** An address that holds the state. */
function linkTo<S extends State>(calculator: Kept<S>, state: S, path: string): string {
  const query = toAddress(calculator, state);
  return `${location.origin}${path}${query ? `?${query}` : ''}`;
}

/**
 * Copies a link that holds the state and says so; where the browser does not allow it, gives the link itself.
 */
export async function copyLink<S extends State>(
  calculator: Kept<S>,
  state: S,
  path: string,
): Promise<string> {
  const link = linkTo(calculator, state, path);
  try {
    await navigator.clipboard.writeText(link);
    return 'Link copied. It holds your numbers and nothing else.';
  } catch {
    return `This browser does not allow copying. The link is ${link}`;
  }
}

/** Puts the state into the address of the page itself, where it outlives a new load. */
export function keepInAddress<S extends State>(calculator: Kept<S>, state: S): void {
  history.replaceState(history.state, '', linkTo(calculator, state, location.pathname) + location.hash);
}
