import type { Bottle } from '../pigment/bottles.ts';
import { readyBottle, type OwnBottle } from './ownBottle.ts';

/** The bottles of one's own as the model mixes them, in their order; one that cannot be mixed is left out. */
export function readyBottles(shelf: readonly OwnBottle[]): readonly Bottle[] {
  return shelf.flatMap((one) => {
    const made = readyBottle(one);
    return made.ok ? [made.bottle] : [];
  });
}
