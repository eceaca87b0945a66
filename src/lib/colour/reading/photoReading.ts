import { linearLight, linearToLab, type Rgb } from '../spaces/srgbToLab.ts';
import { boxAround, type LabBox } from './labBox.ts';
import { readingValues } from '../numbers/reading.ts';

/**
 * A patch of a picture: mean of its coded values (0 to 1), their spread (standard deviation), and the share
 * of dots at an end.
 */
export type Patch = Readonly<{ mean: Rgb; spread: Rgb; clippedShare: number }>;

export type PhotoReading =
  | Readonly<{ ok: true; box: LabBox }>
  | Readonly<{
      ok: false;
      reason:
        | 'no-card'
        | 'card-clipped'
        | 'skin-clipped'
        | 'card-too-dark'
        | 'card-reflectance'
        | 'skin-brighter-than-white';
    }>;

const channels = ['r', 'g', 'b'] as const;
const mostClipped = 0.01;
const brightest = 0.985;
const least = 0.02;

function isClipped({ mean, clippedShare }: Patch): boolean {
  return clippedShare > mostClipped || channels.some((channel) => mean[channel] > brightest);
}

/**
 * Skin light over card light, channel by channel, times what the card throws back: white and brightness are
 * then the card's.
 */
function againstCard(skin: Rgb, card: Rgb, cardReflectance: number): Rgb {
  const part = (channel: (typeof channels)[number]) =>
    (cardReflectance * linearLight(skin[channel])) / linearLight(card[channel]);
  return { r: part('r'), g: part('g'), b: part('b') };
}

/**
 * L*a*b* of skin from one picture that holds a grey card of known reflectance (0 to 1), lit alike. Its
 * interval carries the spread of both patches (first order: each channel moved by its spread, squares added,
 * doubled) and what a camera leaves.
 * Refused without a card, and where card or skin ran into the end of the scale: what is clipped cannot be
 * undone.
 */
export function photoReading(skin: Patch, card: Patch | undefined, cardReflectance: number): PhotoReading {
  if (!card) return { ok: false, reason: 'no-card' };
  if (!(cardReflectance > 0.02 && cardReflectance < 1)) return { ok: false, reason: 'card-reflectance' };
  if (isClipped(card)) return { ok: false, reason: 'card-clipped' };
  if (isClipped(skin)) return { ok: false, reason: 'skin-clipped' };
  if (channels.some((channel) => linearLight(card.mean[channel]) < least))
    return { ok: false, reason: 'card-too-dark' };
  const light = againstCard(skin.mean, card.mean, cardReflectance);
  if (channels.some((channel) => light[channel] > 1))
    return { ok: false, reason: 'skin-brighter-than-white' };

  const lab = linearToLab(light);
  const moved = channels.flatMap((channel) => {
    const nudged = ({ mean, spread }: Patch): Rgb => ({
      ...mean,
      [channel]: mean[channel] + spread[channel],
    });
    return [
      linearToLab(againstCard(nudged(skin), card.mean, cardReflectance)),
      linearToLab(againstCard(skin.mean, nudged(card), cardReflectance)),
    ];
  });
  const half = (axis: 'l' | 'a' | 'b') =>
    Math.hypot(readingValues.camera, ...moved.map((other) => 2 * (other[axis] - lab[axis])));
  return { ok: true, box: boxAround(lab, { l: half('l'), a: half('a'), b: half('b') }) };
}
