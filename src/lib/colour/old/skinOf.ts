import type { Lab } from '../spaces/lab.ts';
import { overOldPigment, type OverOldPigment } from '../pigment/oldPigment.ts';
import { skinOptics } from '../layers/skinOptics.ts';
import type { OldWork } from './oldWorks.ts';

/**
 * Old work by its look, as a change of the skin around it: L* a share of the skin's, a* and b* of its own.
 * Invented.
 */
const oldLooks: Readonly<Record<Exclude<OldWork, 'none'>, (skin: Lab) => Lab>> = {
  'grey-blue': ({ l }) => ({ l: l * 0.74, a: 0, b: -2 }),
  'ash-grey': ({ l }) => ({ l: l * 0.72, a: 1, b: 4 }),
  green: ({ l }) => ({ l: l * 0.74, a: -2, b: 9 }),
  violet: ({ l }) => ({ l: l * 0.74, a: 7, b: -1 }),
  pink: ({ l }) => ({ l: l * 0.84, a: 19, b: 12 }),
  orange: ({ l }) => ({ l: l * 0.84, a: 17, b: 25 }),
};

/** The skin of a state, bare or with old work in it. */
export function skinOf({
  skinL,
  skinA,
  skinB,
  oldWork,
}: Readonly<{ skinL: number; skinA: number; skinB: number; oldWork: OldWork }>): OverOldPigment {
  const bare: Lab = { l: skinL, a: skinA, b: skinB };
  return oldWork === 'none' ? skinOptics(bare) : overOldPigment(bare, oldLooks[oldWork](bare));
}
