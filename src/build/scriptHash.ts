import { createHash } from 'node:crypto';

/** The content policy's name for one inline script: its SHA-256, base64. */
export function scriptHash(script: string): `sha256-${string}` {
  return `sha256-${createHash('sha256').update(script).digest('base64')}`;
}
