import type { Calculator, Field, State } from './spec.ts';

/** Every state has a start: what the page shows before anyone touches it. */
export function startState<S extends State, R>({ fields }: Calculator<S, R>): S {
  return mapFields<S>(fields, (field) => field.start);
}

/** Builds a whole state, one value a field. */
export function mapFields<S extends State>(
  fields: { readonly [K in keyof S]: Field<S[K]> },
  pick: <K extends keyof S>(field: Field<S[K]>) => S[K],
): S {
  const state: Partial<S> = {};
  for (const name in fields) state[name] = pick(fields[name]);
  if (!isComplete(state, fields)) throw new Error('A field has no value.');
  return state;
}

function isComplete<S extends State>(
  state: Partial<S>,
  fields: { readonly [K in keyof S]: unknown },
): state is S {
  for (const name in fields) if (state[name] === undefined) return false;
  return true;
}
