import type { Calculator, Field, Refusal, State } from './spec.ts';

export type Problem = Readonly<{ key: string; text: string; refusal: Refusal }>;

/** Names the sections of an address that are not a calculator's own fields but are allowed on its page. */
const foreignKeys: ReadonlySet<string> = new Set(['from']);

/** Every state has a start, so an address can only ever move away from it. */
export function startState<S extends State, R>({ fields }: Calculator<S, R>): S {
  return mapFields<S>(fields, (field) => field.start);
}

function mapFields<S extends State>(
  fields: { readonly [K in keyof S]: Field<S[K]> },
  pick: <K extends keyof S>(field: Field<S[K]>) => S[K],
): S {
  const state: Partial<S> = {};
  for (const name in fields) state[name] = pick(fields[name]);
  return complete(state, fields);
}

function complete<S extends State>(state: Partial<S>, fields: { readonly [K in keyof S]: unknown }): S {
  if (!isComplete(state, fields)) throw new Error('A field of the calculator has no value.');
  return state;
}

function isComplete<S extends State>(state: Partial<S>, fields: { readonly [K in keyof S]: unknown }): state is S {
  for (const name in fields) if (state[name] === undefined) return false;
  return true;
}

/**
 * Reads a state from an address. Total: whatever the query holds, a whole state comes back,
 * and each part that was refused is named with the reason. A key given twice counts once, the first time.
 */
export function fromAddress<S extends State, R>(
  calculator: Calculator<S, R>,
  query: string,
): Readonly<{ state: S; refused: readonly Problem[] }> {
  const given = new URLSearchParams(query);
  const refused: Problem[] = [];
  const known = new Set<string>(foreignKeys);
  const state = mapFields<S>(calculator.fields, (field) => {
    known.add(field.key);
    const text = given.get(field.key);
    if (text === null || field.kept === 'memory') return field.start;
    const read = field.read(text);
    if (read.ok) return read.value;
    refused.push({ key: field.key, text, refusal: read.refusal });
    return field.start;
  });
  for (const [key, text] of given) {
    if (!known.has(key)) refused.push({ key, text, refusal: { code: 'unknown-field' } });
  }
  return { state, refused };
}

/** Writes what differs from the start, in the order of the fields; '' when nothing does. */
export function toAddress<S extends State, R>(calculator: Calculator<S, R>, state: S): string {
  const out = new URLSearchParams();
  for (const name in calculator.fields) {
    const field = calculator.fields[name];
    if (field.kept === 'memory') continue;
    const text = field.write(state[name]);
    if (text !== field.write(field.start)) out.set(field.key, text);
  }
  return out.toString();
}

