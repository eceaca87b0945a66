/** More digits than any picture or sentence shows. */
const digits = 5;

function shorten(part: object): void {
  for (const [key, value] of Object.entries(part)) {
    if (typeof value === 'number') {
      if (Number.isFinite(value) && !Number.isInteger(value))
        Reflect.set(part, key, Number(value.toPrecision(digits)));
    } else if (typeof value === 'object' && value !== null) shorten(value);
  }
}

/**
 * A copy of an answer with its numbers to five digits. It is sent with the page: the twelve digits more of a
 * number could not be packed, and nobody sees them.
 */
export function shortened<T extends object>(answer: T): T {
  const copy = structuredClone(answer);
  shorten(copy);
  return copy;
}
