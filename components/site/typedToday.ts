/** What was typed lies under one key a place: this, then what names the place. */
export const typedPrefix = 'tautline-typed ';

/** True where something that was typed is kept on this device: then what reads it is fetched. */
export function isTypedKept(): boolean {
  try {
    return Object.keys(localStorage).some((key) => key.startsWith(typedPrefix));
  } catch {
    return false;
  }
}
