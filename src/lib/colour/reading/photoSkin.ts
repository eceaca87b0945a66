import { linearLight } from '../spaces/srgbToLab.ts';
import { photoReading, type Patch, type PhotoReading } from './photoReading.ts';
import { readBox, type SkinReading } from './skinReading.ts';
import { readingValues } from '../numbers/reading.ts';

export type PhotoSkin =
  | SkinReading
  | Extract<PhotoReading, { ok: false }>
  | Readonly<{ ok: false; reason: 'card-not-grey' }>;

/**
 * How many times as strong the strongest channel of a patch is as the weakest, in light; no end to it where
 * one gives none.
 */
export function tintOf({ mean }: Patch): number {
  const light = [linearLight(mean.r), linearLight(mean.g), linearLight(mean.b)];
  const least = Math.min(...light);
  return least > 0 ? Math.max(...light) / least : Infinity;
}

/**
 * A skin read from a picture by the grey card beside it, with its interval carried into both angles. Refused
 * with a reason, never guessed.
 */
export function photoSkin(skin: Patch, card: Patch | undefined, cardReflectance: number): PhotoSkin {
  const read = photoReading(skin, card, cardReflectance);
  if (!read.ok) return read;
  if (card && tintOf(card) > readingValues.cardTintMost) return { ok: false, reason: 'card-not-grey' };
  return readBox(read.box);
}
