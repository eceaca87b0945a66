import * as v from 'valibot';
import { libraryVersion } from '#lib/version.ts';
import { openOurs, writeOurs } from './openOurs.ts';
import type { Calculator, Field, State, Value } from './spec.ts';

/**
 * The form of the files this version writes. Older forms stay readable; a newer one is refused, never guessed
 * at.
 */
const markFileSchema = 1;
/** An address longer than this is cut off by some servers. The largest of ours has about 1,000 characters. */
const longestAddress = 8000;

const text = (most: number) => v.pipe(v.string(), v.maxLength(most));

const markFile = v.strictObject({
  schema: v.literal(markFileSchema),
  holds: v.literal('calculator'),
  library: text(40),
  calculator: v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,60}$/)),
  fields: v.pipe(
    v.record(text(60), text(4000)),
    v.check((fields) => Object.keys(fields).length <= 300),
  ),
});
export type MarkFile = Readonly<v.InferOutput<typeof markFile>>;

export type ReadMarkFile =
  | Readonly<{ ok: true; file: MarkFile; query: string }>
  | Readonly<{ ok: false; reason: 'too-large' | 'not-a-file-of-ours' | 'damaged' | 'too-long' }>
  | Readonly<{ ok: false; reason: 'newer-schema'; schema: number }>
  | Readonly<{ ok: false; reason: 'unknown-calculator'; calculator: string }>;

/**
 * Every field of a calculator as its address writes it, those at their start too: a later start must not
 * change an old file. Fields kept in memory never reach a file.
 */
export function writeMarkFile<S extends State, R>({ id, fields }: Calculator<S, R>, state: S): string {
  const written: Record<string, string> = {};
  const write = <T extends Value>(field: Field<T>, value: T) => {
    if (field.kept === 'address') written[field.key] = field.write(value);
  };
  for (const name in fields) write(fields[name], state[name]);
  const file: MarkFile = {
    schema: markFileSchema,
    holds: 'calculator',
    library: libraryVersion,
    calculator: id,
    fields: written,
  };
  return writeOurs(file);
}

/**
 * Reads a file into the address of its calculator. The values themselves are read by that page, as from any
 * link: it names what it refuses.
 * Never throws. `known`: ids of the calculators of this version.
 */
export function readMarkFile(content: string, known: readonly string[]): ReadMarkFile {
  const opened = openOurs(content, 'calculator', markFileSchema);
  if (!opened.ok) return opened;
  const read = v.safeParse(markFile, opened.value);
  if (!read.success) return { ok: false, reason: 'damaged' };
  const file = read.output;
  if (!known.includes(file.calculator))
    return { ok: false, reason: 'unknown-calculator', calculator: file.calculator };
  const query = new URLSearchParams(file.fields).toString();
  return query.length > longestAddress ? { ok: false, reason: 'too-long' } : { ok: true, file, query };
}
