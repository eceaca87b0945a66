import { parsers } from '#calculators/parsers.ts';
import type { State } from '#calculators/spec.ts';
import { mapFields } from '#calculators/startState.ts';
import { fieldOf, readSlot, type Fields } from './readSlot.ts';
import type { Draft } from './useCalculator.ts';

type Drafts = Readonly<Record<string, Draft>>;

/**
 * What was typed or moved: numbers as an address writes them, refused texts as typed. `query`: of the address
 * under which it was typed, because a link with other numbers wins.
 */
export type TypedState = Readonly<{
  query: string;
  fields: Readonly<Record<string, string>>;
  drafts: Readonly<Record<string, string>>;
}>;

/** The longest refused text that is worth keeping; a list of pairs may be long. */
const longestDraft = 4000;

function isKept<S extends State>(calculator: Fields<S>, slot: string): boolean {
  const name = fieldOf(calculator, slot);
  return name !== undefined && calculator.fields[name].kept !== 'memory';
}

/** What is to be kept of a calculator; nothing where it stands at its start. */
export function toTyped<S extends State>(
  calculator: Fields<S>,
  state: S,
  drafts: Drafts,
  query: string,
): TypedState | undefined {
  const fields: Record<string, string> = {};
  let differs = false;
  for (const name in calculator.fields) {
    const { kept, key, start, write } = calculator.fields[name];
    if (kept === 'memory') continue;
    const text = write(state[name]);
    fields[key] = text;
    differs ||= text !== write(start);
  }
  const refused: Record<string, string> = {};
  for (const [slot, { text }] of Object.entries(drafts))
    if (isKept(calculator, slot) && text.length <= longestDraft) refused[slot] = text;
  return differs || Object.keys(refused).length > 0 ? { query, fields, drafts: refused } : undefined;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
const textsOf = (value: unknown): readonly (readonly [string, string])[] =>
  isRecord(value)
    ? Object.entries(value).flatMap(([key, text]) => (typeof text === 'string' ? [[key, text] as const] : []))
    : [];

/**
 * Reads what was kept. Total: whatever it holds, a whole state comes back. `isLost`: something that was typed
 * is no longer understood, and not shown.
 */
export function fromTyped<S extends State>(
  calculator: Fields<S>,
  typed: unknown,
  nameOf: (name: string) => string,
): Readonly<{ query: string; state: S; drafts: Drafts; isLost: boolean }> {
  const { query, fields, drafts } = isRecord(typed) ? typed : {};
  const given = new Map(textsOf(fields));
  let isLost = !isRecord(fields);
  let state = mapFields<S>(calculator.fields, (field) => {
    const text = given.get(field.key);
    if (text === undefined || field.kept === 'memory') return field.start;
    given.delete(field.key);
    const read = field.read(text, parsers);
    isLost ||= !read.ok;
    return read.ok ? read.value : field.start;
  });
  isLost ||= given.size > 0;
  const refused: Record<string, Draft> = {};
  for (const [slot, text] of textsOf(drafts)) {
    const told = isKept(calculator, slot) ? readSlot(calculator, slot, text, nameOf) : undefined;
    if (told?.ok) state = told.value(state);
    else if (told) refused[slot] = { text, sentence: told.sentence };
    else isLost = true;
  }
  return { query: typeof query === 'string' ? query : '', state, drafts: refused, isLost };
}
