/**
 * What a surface between air and a denser body adds and keeps back (Saunderson 1942).
 * `outside`: share of light thrown back before it enters (k1). `inside`: share of light on its way out thrown
 * back in (k2).
 */
export type Surface = Readonly<{ outside: number; inside: number }>;

/** A surface that throws nothing back. */
export const noSurface: Surface = { outside: 0, inside: 0 };

/**
 * Reflectance inside the body to what an instrument sees from outside, the mirror shine included or left out.
 */
export function seenThroughSurface(
  within: number,
  { outside, inside }: Surface,
  shine: 'included' | 'excluded' = 'included',
): number {
  const body = ((1 - outside) * (1 - inside) * within) / (1 - inside * within);
  return shine === 'included' ? outside + body : body;
}

/** The way back: what is seen from outside to the reflectance within. */
export function withinSurface(
  seen: number,
  { outside, inside }: Surface,
  shine: 'included' | 'excluded' = 'included',
): number {
  const body = shine === 'included' ? seen - outside : seen;
  return body / ((1 - outside) * (1 - inside) + inside * body);
}
