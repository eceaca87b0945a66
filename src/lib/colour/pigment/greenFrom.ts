const halvings = 40;

/**
 * The lowest dose from which a* lies below zero, where colour turns from red to green, or that it never does
 * up to `most`.
 * `aAt` gives a* at a dose. Looked for at `steps` even doses and then by halving: a dip between two doses is
 * not seen.
 */
export function greenFrom(
  aAt: (dose: number) => number,
  most: number,
  steps = 80,
): Readonly<{ ok: true; dose: number }> | Readonly<{ ok: false; reason: 'never-green' }> {
  for (let i = 1; i <= steps; i++) {
    let [low, high] = [((i - 1) / steps) * most, (i / steps) * most];
    if (!(aAt(high) < 0)) continue;
    for (let round = 0; round < halvings; round++) {
      const middle = (low + high) / 2;
      if (aAt(middle) < 0) high = middle;
      else low = middle;
    }
    return { ok: true, dose: high };
  }
  return { ok: false, reason: 'never-green' };
}
