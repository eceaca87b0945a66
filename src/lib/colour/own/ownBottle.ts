import { bottleOf, noPigment, wholeOf, type Bottle, type Parts } from '../pigment/bottles.ts';
import { absorptionRatio } from '../layers/kubelkaMunk.ts';
import type { Lab } from '../spaces/lab.ts';
import { pigmentIds } from '../pigment/pigments.ts';
import { swatchTrust } from '../pigment/swatchTrust.ts';
import {
  calibrateSwatches,
  swatchReflectance,
  type Finish,
  type FromSwatches,
  type SwatchReason,
  type TwoSwatches,
} from './calibrateSwatches.ts';
import type { OwnSlot } from './ownSlots.ts';

/**
 * What is known of a bottle: its pigments by Colour Index number, its colour when thick, or that and one
 * white tint.
 */
export type OwnContent =
  | Readonly<{ from: 'shares'; parts: Parts }>
  | Readonly<{ from: 'swatch'; lab: Lab; finish: Finish }>
  | (Readonly<{ from: 'two-swatches' }> & TwoSwatches);

/** A bottle that an artist or a school added, with the name she gave it. */
export type OwnBottle = Readonly<{ slot: OwnSlot; name: string; content: OwnContent }>;

export type ReadyBottle =
  | Readonly<{
      ok: true;
      bottle: Bottle;
      /** False where the spectrum is a guess that nothing was tested for. */
      isTested: boolean;
      calibrated?: Readonly<{ scatter: number; tintMiss: number }>;
    }>
  | Readonly<{ ok: false; at: 'shares'; reason: 'no-shares' | 'below-zero' }>
  | Readonly<{ ok: false; at: 'swatch'; reason: SwatchReason }>
  | Extract<FromSwatches, { ok: false }>;

/** Backscatter of a drop that was never calibrated: as the palette's yellow and red (assumed). */
export const assumedScatter = 0.5;

/** A bottle as the model mixes it, or where and why it cannot be. */
export function readyBottle({ slot, content }: Pick<OwnBottle, 'slot' | 'content'>): ReadyBottle {
  if (content.from === 'shares') {
    if (pigmentIds.some((id) => !((content.parts[id] ?? 0) >= 0)))
      return { ok: false, at: 'shares', reason: 'below-zero' };
    if (!(wholeOf(content.parts) > 0 && Number.isFinite(wholeOf(content.parts))))
      return { ok: false, at: 'shares', reason: 'no-shares' };
    return { ok: true, bottle: bottleOf(slot, content.parts), isTested: true };
  }
  if (content.from === 'swatch') {
    const found = swatchReflectance(content.lab, content.finish);
    if (!found.ok) return { ok: false, at: 'swatch', reason: found.reason };
    const own = found.reflectance.map((value) => ({
      k: assumedScatter * absorptionRatio(value),
      s: assumedScatter,
    }));
    return {
      ok: true,
      bottle: { id: slot, shares: { ...noPigment, own } },
      isTested: swatchTrust(content.lab) === 'earth-like',
    };
  }
  const found = calibrateSwatches(content);
  if (!found.ok) return found;
  const { layer, scatter, tintMiss, isTested } = found;
  return {
    ok: true,
    bottle: { id: slot, shares: { ...noPigment, own: layer } },
    isTested,
    calibrated: { scatter, tintMiss },
  };
}
