import type { Side } from '../marks/markSet.ts';
import { archOfEyeWidth, archTwoThirds, irisEdgeOfEyeWidth } from '../numbers/arch.ts';
import { goldenShare, goldenShareFromTail } from './goldenShare.ts';
import { settledBrow, type BrowEnds } from './settleBrow.ts';

/** Rules found in print, from the nose outwards. */
export const publishedArchRules = [
  'pupil',
  'iris-edge',
  'iris-edge-to-corner',
  'two-thirds',
  'women',
  'models',
  'outer-corner',
] as const;
/** The golden section in both of its readings, and a share of one's own: habits, no study behind them. */
export const habitArchRules = ['golden-from-front', 'golden-from-tail', 'own-share'] as const;
export const archRules = [...publishedArchRules, ...habitArchRules] as const;
export type PublishedArchRule = (typeof publishedArchRules)[number];
export type ArchRule = (typeof archRules)[number];

/**
 * The eye's marks on one side, or settled for both: distances from the midline. The iris is what shows of it,
 * edge to edge.
 */
export type ArchEye = Readonly<{
  innerCornerMm: number;
  pupilMm: number;
  outerCornerMm: number;
  irisWidthMm: number;
}>;

export type ArchInputs = Readonly<{
  brow: BrowEnds;
  eye: ArchEye;
  /** 0 at the front, 1 at the tail. */
  ownShare: number;
}>;

export type ArchPlaces = Readonly<Record<ArchRule, number>>;
export type PlacedArch =
  | Readonly<{ ok: true; places: ArchPlaces }>
  | Readonly<{ ok: false; reason: 'no-length' | 'eye-not-in-order' }>;

/** Outer edge of the iris, from the pupil: half of the visible iris further out. */
export function irisEdgeMm({ pupilMm, irisWidthMm }: Pick<ArchEye, 'pupilMm' | 'irisWidthMm'>): number {
  return pupilMm + irisWidthMm / 2;
}

/**
 * The same edge where the iris was not measured: a published share of the eye's width (Roth & Metzinger
 * 2003). Rougher by a millimetre or two.
 */
export function irisEdgeByEyeWidthMm(
  eye: Pick<ArchEye, 'innerCornerMm' | 'outerCornerMm'>,
  group: keyof typeof irisEdgeOfEyeWidth,
): number {
  return alongEyeMm(eye, irisEdgeOfEyeWidth[group]);
}

function alongEyeMm(
  { innerCornerMm, outerCornerMm }: Pick<ArchEye, 'innerCornerMm' | 'outerCornerMm'>,
  share: number,
): number {
  return innerCornerMm + share * (outerCornerMm - innerCornerMm);
}

/**
 * Where each rule puts the arch: millimetres from the midline, as seen from the front.
 * Shares of the brow count from the front; shares of the eye from its inner corner.
 * Refused where the tail is not further out than the front, or the eye's marks do not follow each other
 * outwards.
 */
export function placeArch({ brow, eye, ownShare }: ArchInputs): PlacedArch {
  const settled = settledBrow(brow);
  if (!settled.ok) return settled;
  const edgeMm = irisEdgeMm(eye);
  if (!(eye.innerCornerMm < eye.pupilMm && edgeMm < eye.outerCornerMm))
    return { ok: false, reason: 'eye-not-in-order' };
  const { frontMm, lengthMm } = settled.brow;
  const alongBrowMm = (share: number) => frontMm + share * lengthMm;
  return {
    ok: true,
    places: {
      pupil: eye.pupilMm,
      'iris-edge': edgeMm,
      'iris-edge-to-corner': (edgeMm + eye.outerCornerMm) / 2,
      'two-thirds': alongBrowMm(archTwoThirds),
      women: alongEyeMm(eye, archOfEyeWidth.women),
      models: alongEyeMm(eye, archOfEyeWidth.models),
      'outer-corner': eye.outerCornerMm,
      'golden-from-front': alongBrowMm(goldenShare),
      'golden-from-tail': alongBrowMm(goldenShareFromTail),
      'own-share': alongBrowMm(ownShare),
    },
  };
}

/** Each side by its own marks: for comparing only. One plan has one arch. */
export function placeArchBySide(
  inputs: Readonly<Record<Side, ArchInputs>>,
): Readonly<Record<Side, PlacedArch>> {
  return { right: placeArch(inputs.right), left: placeArch(inputs.left) };
}
