import type { FacePoint } from '../marks/faceFrame.ts';

/**
 * The tail tip's room up and down, mm, each positive where the habit is kept: `overLowerMm` above the front's
 * lower edge, `underTopMm` below the front's top.
 */
export type TailBand = Readonly<{ overLowerMm: number; underTopMm: number }>;

/** The tip of one tail between the two levels of its own front. */
export function tailBand({
  frontLower,
  frontTop,
  tail,
}: Readonly<Record<'frontLower' | 'frontTop' | 'tail', FacePoint>>): TailBand {
  return { overLowerMm: tail.vMm - frontLower.vMm, underTopMm: frontTop.vMm - tail.vMm };
}
