import type { FacePoint } from '../marks/faceFrame.ts';
import type { BrowMark } from '../marks/markSet.ts';

/** Which way leads out of the outline at a mark. */
export type WayOut = 'up' | 'down' | 'outward';

const waysOut: Readonly<Record<BrowMark, WayOut>> = {
  frontLower: 'down',
  frontTop: 'up',
  archTop: 'up',
  archLower: 'down',
  tail: 'outward',
};

export function wayOut(mark: BrowMark): WayOut {
  return waysOut[mark];
}

const across: Readonly<Record<BrowMark, BrowMark | undefined>> = {
  frontLower: 'frontTop',
  frontTop: 'frontLower',
  archTop: 'archLower',
  archLower: 'archTop',
  tail: undefined,
};

/** The mark at the other edge of the brow at the same place; the tail has none. */
export function acrossFrom(mark: BrowMark): BrowMark | undefined {
  return across[mark];
}

/**
 * How far the pigment's edge ends inside the approved outline at a mark, along the way out, mm. Positive:
 * skin inside the outline is still bare. Negative: pigment stands past the outline.
 */
export function shortOfOutlineMm(mark: BrowMark, approved: FacePoint, pigment: FacePoint): number {
  switch (waysOut[mark]) {
    case 'up':
      return approved.vMm - pigment.vMm;
    case 'down':
      return pigment.vMm - approved.vMm;
    case 'outward':
      return approved.uMm - pigment.uMm;
  }
}
