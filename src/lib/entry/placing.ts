import {
  tradeCheckCount as insideCount,
  tradeChecks as insideChecks,
  type TradeChoices,
} from '../mapping/outline/tradeChecks.ts';
import { anchorDistances as insideAnchors, frontAnchors } from '../mapping/placing/anchorDistances.ts';
import {
  archRules,
  placeArch as insideArch,
  type ArchEye,
  type ArchInputs,
} from '../mapping/placing/archRules.ts';
import { archSpread as insideArchSpread } from '../mapping/placing/archSpread.ts';
import { ownShareOf as insideOwnShare } from '../mapping/placing/ownShare.ts';
import {
  placeFrontAndTail as insidePlace,
  type PlacingChoices,
} from '../mapping/placing/placeFrontAndTail.ts';
import { browMarks } from '../mapping/marks/markSet.ts';
import { placingMarkNames, placingMarksOf as insideMarks } from '../mapping/placing/placingMarks.ts';
import {
  sharedTailLine as insideShared,
  tailAgainstLine as insideAgainst,
  type TailLine,
} from '../mapping/placing/tailLine.ts';
import { underOutline as insideUnder, type UnderReading } from '../mapping/under/underOutline.ts';
import { above0, each, oneOf, refusing, shape, some, throwing, whole, type Checked } from './domain.ts';
import * as of from './mappingDomains.ts';
import { bothSides, lengthMm, onFaceMm, share } from './units.ts';

export {
  equalVerdicts,
  limitCheckIds,
  type BrowsOnFace,
  type EqualCheckId,
  type EqualVerdict,
  type LimitCheckId,
  type TradeCheck,
  type TradeChoices,
  type TradeReport,
} from '../mapping/outline/tradeChecks.ts';
export type { Outlines, StationChoices, StationPair } from '../mapping/outline/stationPairs.ts';
export {
  frontAnchors,
  type AnchorDistance,
  type AnchorMarks,
  type FrontAnchor,
} from '../mapping/placing/anchorDistances.ts';
export {
  archRules,
  habitArchRules,
  publishedArchRules,
  type ArchEye,
  type ArchInputs,
  type ArchPlaces,
  type ArchRule,
  type PlacedArch,
  type PublishedArchRule,
} from '../mapping/placing/archRules.ts';
export type { ArchSpread } from '../mapping/placing/archSpread.ts';
export type { OwnShare } from '../mapping/placing/ownShare.ts';
export type { BrowEnds } from '../mapping/placing/settleBrow.ts';
export {
  frontEdges,
  lengthKinds,
  type DrawnLengths,
  type FrontEdge,
  type LengthKind,
} from '../mapping/placing/drawnLengths.ts';
export type {
  FrontSide,
  NoPlacing,
  Placing,
  PlacingChoices,
  TailSide,
} from '../mapping/placing/placeFrontAndTail.ts';
export {
  placingMarkNames,
  type PlacingMark,
  type PlacingMarks,
  type SideMarks,
} from '../mapping/placing/placingMarks.ts';
export type { TailAgainstLine, TailLine } from '../mapping/placing/tailLine.ts';
export { limitVerdicts, type LimitVerdict } from '../mapping/placing/limitVerdict.ts';
export type { BoneEdge } from '../mapping/under/offBone.ts';
export type { Stretch, Stretches } from '../mapping/under/stretch.ts';
export type { ReadUnder, UnderOutline, UnderReading } from '../mapping/under/underOutline.ts';

/** Brow and anchor marks of both sides in the face's frame. */
export const placingMarksOf: typeof insideMarks = throwing(
  insideMarks,
  'set frame',
  of.markSet,
  of.faceFrame,
);

const anchorMarks = bothSides(shape({ noseWing: of.facePoint, innerCorner: of.facePoint }));

/** Distance of each front anchor from the midline, mm. */
export const anchorDistances: typeof insideAnchors = throwing(
  insideAnchors,
  'marks nostrilShare',
  anchorMarks,
  share,
);

/** The line nose wing – outer eye corner, settled for both sides. */
export const sharedTailLine: typeof insideShared = throwing(
  insideShared,
  'marks',
  bothSides(shape({ noseWing: of.facePoint, outerCorner: of.facePoint })),
);

/** A tail tip against that line. */
export const tailAgainstLine: Checked<typeof insideAgainst> = refusing(
  insideAgainst,
  'line tail',
  shape<TailLine>({ wing: of.facePoint, corner: of.facePoint }),
  of.facePoint,
);

const placing = {
  anchor: oneOf([...frontAnchors, 'own']),
  ownMm: lengthMm,
  edge: of.frontEdge,
  nostrilShare: share,
  ...of.readingChoice,
};

/** Front and tail of both brows: what each anchor gives, and every tail check with its interval. */
export const placeFrontAndTail: Checked<typeof insidePlace> = refusing(
  insidePlace,
  'marks choices',
  of.placingMarks,
  shape<PlacingChoices>(placing),
);

const browsOnFace = bothSides(each([...new Set([...placingMarkNames, ...browMarks])], of.facePoint));

/** Every check of the trade on two drawn brows, each with its interval. */
export const tradeChecks: Checked<typeof insideChecks> = refusing(
  insideChecks,
  'marks choices',
  browsOnFace,
  shape<TradeChoices>({ ...placing, stations: of.stations }),
);

/** How many comparisons those are. */
export const tradeCheckCount: typeof insideCount = throwing(insideCount, 'stations', whole(0, 100));

const eye = shape<ArchEye>({
  innerCornerMm: onFaceMm,
  pupilMm: onFaceMm,
  outerCornerMm: onFaceMm,
  irisWidthMm: above0(50),
});

/** Where each rule puts the arch, mm from the midline. */
export const placeArch: Checked<typeof insideArch> = refusing(
  insideArch,
  'inputs',
  shape<ArchInputs>({ brow: of.browEnds, eye, ownShare: share }),
);

/** How far a group of rules disagrees, mm. */
export const archSpread: typeof insideArchSpread = throwing(
  insideArchSpread,
  'places rules',
  each(archRules, onFaceMm),
  some(oneOf(archRules), 100),
);

/** The share of its own length at which a brow's arch stands. */
export const ownShareOf: Checked<typeof insideOwnShare> = refusing(
  insideOwnShare,
  'ends archMm',
  of.browEnds,
  onFaceMm,
);

const bone = { archMm: onFaceMm, lengthMm, atArchMm: onFaceMm, atTailMm: onFaceMm };

/** An outline sorted by what lies under it: hair, bone, both, nothing. */
export const underOutline: Checked<typeof insideUnder> = refusing(
  insideUnder,
  'reading',
  shape<UnderReading>({
    bone: shape(bone),
    hair: shape({ fromMm: onFaceMm, toMm: onFaceMm }),
    thinFromMm: onFaceMm,
  }),
);
