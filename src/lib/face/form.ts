import type { Side } from '../mapping/marks/markSet.ts';
import type { Spot, Spots } from './spot.ts';

/** How the upper lid lies: crease in sight, fold over the crease, no crease, deep-set. */
export type Lid = 'open' | 'hooded' | 'single' | 'deep';
export type HairStyle =
  | 'bald'
  | 'crop'
  | 'short'
  | 'tied'
  | 'bob'
  | 'long'
  | 'curls'
  | 'locs'
  | 'scarf'
  | 'wrap';

/** Brow hair of one side. Places: t along (0 front, 1 tail), s across (0 lower edge, 1 upper edge). */
export type BrowHair = Readonly<{
  /** Hairs a side at close range; a small picture draws about half. */
  count: number;
  /** 0 to 1, small natural gaps. */
  gaps: number;
  /** 0 to 1, share of the tail hairs missing. */
  sparseTail: number;
  patch?: Readonly<{ t: number; s: number; radiusMm: number }>;
  cowlick?: Readonly<{ t: number; radiusMm: number; turnDeg: number }>;
}>;

/**
 * What is drawn but not marked. Half widths for skull, cheek and jaw; heights against the pupil line;
 * millimetres.
 */
export type Form = Readonly<{
  lid: Lid;
  /** 1 = usual. */
  eyeOpening: number;
  /** -1 almond to 1 round. */
  eyeRoundness: number;
  /** Highest point of the upper lid: -1 towards the nose, 1 outwards. */
  lidPeak: number;
  /**
   * How the client's left eye is drawn apart from the right: its opening as a share, its lid's highest point
   * shifted. No mark moves.
   */
  leftEye: Readonly<{ openingShare: number; peakShift: number }>;
  /** 0 light to 1 dark. */
  irisTone: number;
  bridgeWidthMm: number;
  skullMm: number;
  cheekMm: number;
  jawMm: number;
  jawV: number;
  chinHalfWidthMm: number;
  hairlineV: number;
  mouthV: number;
  mouthWidthMm: number;
  upperLipMm: number;
  lowerLipMm: number;
  /** 0 to 1 each. */
  browBone: number;
  age: number;
  beard: number;
  hair: HairStyle;
  /** 0 white to 1 black; brow hair follows it. */
  hairTone: number;
  glasses: boolean;
  freckles: number;
  browHair: BrowHair;
  /** A bare line across one brow: t along the brow, lean in mm outwards per mm up. */
  scar?: Readonly<{ side: Side; t: number; lean: number }>;
  /** Pale patches, picture x and v of the upright face. */
  vitiligo?: readonly Readonly<{ at: Spot; radiusMm: number }>[];
  /** Corners of the older tattoo under a brow, on its own side. */
  oldWork?: Readonly<Partial<Record<Side, Spots>>>;
  /** The old work's colour as read on the skin, L*a*b*; left out, it is drawn in the ink of its role. */
  oldPigment?: Readonly<{ l: number; a: number; b: number }>;
  /** A pigment plan drawn instead of hair. */
  strokes?: Readonly<{ count: number; lengthMm: number; widthMm: number; spreadMm: number }>;
}>;

export const defaultForm: Form = {
  lid: 'open',
  eyeOpening: 1,
  eyeRoundness: 0,
  lidPeak: 0,
  leftEye: { openingShare: 1, peakShift: 0 },
  irisTone: 0.8,
  bridgeWidthMm: 15,
  skullMm: 73,
  cheekMm: 67,
  jawMm: 54,
  jawV: -76,
  chinHalfWidthMm: 20,
  hairlineV: 66,
  mouthV: -68,
  mouthWidthMm: 49,
  upperLipMm: 6.6,
  lowerLipMm: 8.6,
  browBone: 0.15,
  age: 0.1,
  beard: 0,
  hair: 'tied',
  hairTone: 0.6,
  glasses: false,
  freckles: 0,
  browHair: { count: 230, gaps: 0.15, sparseTail: 0 },
};
