import { parsers } from './parsers.ts';
import type { Calculator, Refusal, State } from './spec.ts';
import { mapFields } from './startState.ts';

export type Problem = Readonly<{ key: string; text: string; refusal: Refusal }>;

/** Names the sections of an address that are not a calculator's own fields but are allowed on its page. */
const foreignKeys: ReadonlySet<string> = new Set(['from']);

/** True where an address gives at least one of this calculator's fields, well or badly. */
export function holdsAny<S extends State>(
  { fields }: Pick<Calculator<S, unknown>, 'fields'>,
  query: string,
): boolean {
  const given = new URLSearchParams(query);
  for (const name in fields) if (given.has(fields[name].key)) return true;
  return false;
}

/**
 * Reads a state from an address. Total: whatever the query holds, a whole state comes back,
 * and each part that was refused is named with the reason. A key given twice counts once, the first time, and
 * the other is named where it says something else.
 */
export function fromAddress<S extends State, R>(
  calculator: Calculator<S, R>,
  query: string,
): Readonly<{ state: S; refused: readonly Problem[] }> {
  const given = new URLSearchParams(query);
  const refused: Problem[] = [];
  const known = new Set<string>(foreignKeys);
  const isHeld = holdsAny(calculator, query);
  const state = mapFields<S>(calculator.fields, (field) => {
    known.add(field.key);
    const text = given.get(field.key);
    if (text === null) return (isHeld ? field.startBefore : undefined) ?? field.start;
    if (field.kept === 'memory') {
      refused.push({ key: field.key, text, refusal: { code: 'never-kept' } });
      return field.start;
    }
    const read = field.read(text, parsers);
    if (read.ok) return read.value;
    refused.push({ key: field.key, text, refusal: read.refusal });
    return field.start;
  });
  for (const [key, text] of given) {
    if (!known.has(key)) refused.push({ key, text, refusal: { code: 'unknown-field' } });
    else if (
      text !== given.get(key) &&
      !refused.some((one) => one.key === key && one.refusal.code === 'given-twice')
    )
      refused.push({ key, text, refusal: { code: 'given-twice' } });
  }
  return { state, refused };
}

/**
 * Writes what differs from the start, in the order of the fields, and beside it each start that was once
 * another; '' when nothing differs.
 */
export function toAddress<S extends State>(
  calculator: Pick<Calculator<S, unknown>, 'fields'>,
  state: S,
): string {
  const out = new URLSearchParams();
  let differs = false;
  for (const name in calculator.fields) {
    const field = calculator.fields[name];
    if (field.kept === 'memory') continue;
    const text = field.write(state[name]);
    const isStart = text === field.write(field.start);
    differs ||= !isStart;
    if (!isStart || field.startBefore !== undefined) out.set(field.key, text);
  }
  return differs ? out.toString() : '';
}
