import {
  placeArch,
  publishedArchRules,
  archRules,
  irisEdgeByEyeWidthMm,
  type ArchPlaces,
  type ArchRule,
} from '#lib/mapping/placing/archRules.ts';
import { archSpread, type ArchSpread } from '#lib/mapping/placing/archSpread.ts';
import { irisWidthMm } from '#lib/mapping/numbers/iris.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

/** Distances from the midline, already settled for both sides; the share in per cent of the brow's length. */
export type ArchPlacementState = Readonly<{
  rule: ArchRule;
  share: number;
  front: number;
  tail: number;
  inner: number;
  pupil: number;
  outer: number;
  iris: number;
}>;

export type ArchPlacement =
  | Readonly<{
      ok: true;
      places: ArchPlaces;
      /** The published rules alone: how far print disagrees with itself. */
      published: ArchSpread;
      chosenMm: number;
      /** The edge of the iris by the eye's width, as a check on the one by the iris. */
      irisEdgeMm: Readonly<{ women: number; models: number }>;
    }>
  | Readonly<{ ok: false; reason: 'no-length' | 'eye-not-in-order' }>;

const fromMidline = (key: string, start: number, lo: number, hi: number) =>
  numberField(key, start, { unit: 'mm', lo, hi, step: 0.1, decimals: 1 });

/**
 * Where ten rules put one arch for both sides. It starts from the level face: the mean of its two fronts and
 * tails, its eyes, and the share at which its own arches stand.
 */
export const archPlacement: Calculator<ArchPlacementState, ArchPlacement> = {
  id: 'arch-placement',
  fields: {
    rule: choiceField<ArchRule>('rule', 'own-share', archRules),
    share: numberField('share', 62.4, { unit: '%', lo: 30, hi: 90, step: 0.1, decimals: 1 }),
    front: fromMidline('front', 16.2, 5, 35),
    tail: fromMidline('tail', 56.4, 36, 80),
    inner: fromMidline('inner', 16, 8, 28),
    pupil: fromMidline('pupil', 31.5, 20, 42),
    outer: fromMidline('outer', 47, 34, 62),
    iris: numberField('iris', irisWidthMm, { unit: 'mm', lo: 9, hi: 14, step: 0.1, decimals: 1 }),
  },
  solve: ({ rule, share, front, tail, inner, pupil, outer, iris }) => {
    const eye = { innerCornerMm: inner, pupilMm: pupil, outerCornerMm: outer, irisWidthMm: iris };
    const placed = placeArch({ brow: { frontMm: front, tailMm: tail }, eye, ownShare: share / 100 });
    if (!placed.ok) return placed;
    const { places } = placed;
    return {
      ok: true,
      places,
      published: archSpread(places, publishedArchRules),
      chosenMm: places[rule],
      irisEdgeMm: { women: irisEdgeByEyeWidthMm(eye, 'women'), models: irisEdgeByEyeWidthMm(eye, 'models') },
    };
  },
};
