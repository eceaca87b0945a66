/** The largest file that is looked into. One of ours has a few kB. */
export const mostBytes = 100_000;

export type Ours =
  | Readonly<{ ok: true; value: Readonly<Record<string, unknown>> }>
  | Readonly<{ ok: false; reason: 'too-large' | 'not-a-file-of-ours' }>
  | Readonly<{ ok: false; reason: 'newer-schema'; schema: number }>;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function parsed(content: string): unknown {
  try {
    return JSON.parse(content);
  } catch {
    // Nesting that is too deep throws as well.
    return undefined;
  }
}

/**
 * The first look into a file: is it one of ours that holds this, in a form this version knows? Never throws.
 * What is inside is not read yet.
 */
export function openOurs(content: string, holds: string, newestSchema: number): Ours {
  if (content.length > mostBytes) return { ok: false, reason: 'too-large' };
  const value = parsed(content);
  if (!isRecord(value) || value['holds'] !== holds) return { ok: false, reason: 'not-a-file-of-ours' };
  const schema = value['schema'];
  if (typeof schema === 'number' && Number.isInteger(schema) && schema > newestSchema)
    return { ok: false, reason: 'newer-schema', schema };
  return { ok: true, value };
}

/** A file of ours as text. */
export function writeOurs(file: Readonly<Record<string, unknown>>): string {
  return `${JSON.stringify(file, null, 1)}\n`;
}
