import { intervalAround, type Interval } from '../../quantities/interval.ts';
import type { Side } from '../marks/markSet.ts';
import { anchorDistances, type AnchorDistance, type FrontAnchor } from './anchorDistances.ts';
import { drawnLengths, type DrawnLengths, type FrontEdge } from './drawnLengths.ts';
import { heightDifferenceShare, leanSharePerMm, midlineShare, outwardDifferenceShare } from './frameShare.ts';
import type { PlacingMarks } from './placingMarks.ts';
import { tailBand } from './tailBand.ts';
import {
  sharedTailLine,
  tailAgainstLine,
  tailLineOf,
  type TailAgainstLine,
  type TailLine,
} from './tailLine.ts';

/**
 * Which anchor was chosen, or a distance of one's own; where the front is measured; how well the marks were
 * read.
 */
export type PlacingChoices = Readonly<{
  anchor: FrontAnchor | 'own';
  ownMm: number;
  edge: FrontEdge;
  /** Place of the nostril's middle between the nose's middle (0) and its wing (1). */
  nostrilShare: number;
  /** Standard uncertainty of one coordinate of one mark, mm. */
  readingMm: number;
  /** Coverage factor of the intervals; `placingComparisons` are shown together. */
  k: number;
}>;

/** Fronts apart, tails level, lengths; and for each side the line, the lower edge and the top. */
export const placingComparisons = 9;

export type FrontSide = Readonly<{ nowMm: number; /** Outward. */ moveMm: number }>;
export type TailSide = Readonly<{
  /** Against the line of both sides. */
  limitMm: number;
  insideLevelMm: number;
  /** Shortest way to that line, positive inside. */
  inside: Interval;
  /** Level, against the line of its own side alone. */
  insideOwnLevelMm: number;
  overLower: Interval;
  underTop: Interval;
}>;

export type Placing = Readonly<{
  ok: true;
  anchors: Readonly<Record<FrontAnchor, AnchorDistance>>;
  /** The one distance of both fronts. */
  chosenMm: number;
  /** From the nearest to the farthest of the anchors. */
  betweenMm: number;
  fronts: Readonly<Record<Side, FrontSide>>;
  /** Left minus right, as drawn now. */
  frontsApart: Interval;
  line: TailLine;
  tails: Readonly<Record<Side, TailSide>>;
  /** Left minus right. */
  tailsUp: Interval;
  lengths: Readonly<Record<Side, DrawnLengths>>;
  /** Left minus right, of the level lengths. */
  lengthsApart: Interval;
}>;
export type NoPlacing = Extract<TailAgainstLine, { ok: false }>;

/**
 * Front and tail of both brows in the face's frame: what each anchor gives, one distance for both fronts, and
 * every tail check with its interval. Reading a mark and settling the midline are both in the intervals (GUM
 * 5.1.2, linear); that of the line leaves out how place and lean of the midline go together, under a
 * twentieth of it.
 */
export function placeFrontAndTail(marks: PlacingMarks, choices: PlacingChoices): Placing | NoPlacing {
  const { right, left } = marks;
  const { edge, readingMm, k } = choices;
  const around = (valueMm: number, share: number) => intervalAround(valueMm, share * readingMm, k);
  const anchors = anchorDistances(marks, choices.nostrilShare);
  const distances = Object.values(anchors).map(({ bothMm }) => bothMm);
  const chosenMm = choices.anchor === 'own' ? choices.ownMm : anchors[choices.anchor].bothMm;
  const line = sharedTailLine(marks);
  const tailOf = (side: Side): TailSide | NoPlacing => {
    const brow = marks[side];
    const { tail } = brow;
    const shared = tailAgainstLine(line, tail);
    const own = tailAgainstLine(tailLineOf(brow), tail);
    if (!shared.ok) return shared;
    if (!own.ok) return own;
    const { overLowerMm, underTopMm } = tailBand(brow);
    return {
      limitMm: shared.limitMm,
      insideLevelMm: shared.insideLevelMm,
      inside: around(shared.insideMm, insideShare(line, tail.uMm, shared.along)),
      insideOwnLevelMm: own.insideLevelMm,
      overLower: around(overLowerMm, heightDifferenceShare(tail.uMm - brow.frontLower.uMm)),
      underTop: around(underTopMm, heightDifferenceShare(tail.uMm - brow.frontTop.uMm)),
    };
  };
  const tails = { right: tailOf('right'), left: tailOf('left') };
  if ('ok' in tails.right) return tails.right;
  if ('ok' in tails.left) return tails.left;
  const lengths = { right: drawnLengths(right, edge), left: drawnLengths(left, edge) };
  const front = (side: Side): FrontSide => ({
    nowMm: marks[side][edge].uMm,
    moveMm: chosenMm - marks[side][edge].uMm,
  });
  return {
    ok: true,
    anchors,
    chosenMm,
    betweenMm: Math.max(...distances) - Math.min(...distances),
    fronts: { right: front('right'), left: front('left') },
    frontsApart: around(left[edge].uMm - right[edge].uMm, outwardDifferenceShare()),
    line,
    tails: { right: tails.right, left: tails.left },
    tailsUp: around(left.tail.vMm - right.tail.vMm, heightDifferenceShare(left.tail.uMm + right.tail.uMm)),
    lengths,
    lengthsApart: around(lengths.left.level - lengths.right.level, 2),
  };
}

/** The tail's own reading, the four marks of the line, and the midline that the tail is measured from. */
function insideShare({ wing, corner }: TailLine, tailMm: number, along: number): number {
  const lengthMm = Math.hypot(corner.uMm - wing.uMm, corner.vMm - wing.vMm);
  const out = (corner.vMm - wing.vMm) / lengthMm;
  const up = (corner.uMm - wing.uMm) / lengthMm;
  return Math.sqrt(
    1 + ((1 - along) ** 2 + along ** 2) / 2 + (out * midlineShare) ** 2 + (up * leanSharePerMm * tailMm) ** 2,
  );
}
