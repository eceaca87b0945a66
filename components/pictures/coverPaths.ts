import { browOf, type CoverState } from '#calculators/coverFields.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { browMarks, type Side } from '#lib/mapping/marks/markSet.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlineCurves } from '#lib/mapping/outline/outlineCurves.ts';
import { spreadShape } from '#lib/mapping/plan/spreadShape.ts';
import type { CoverSeen } from '#words/coverTheOldShape.ts';

/**
 * One side as paths: old work, what of it stays outside, the outline with its corrections, and the moves of
 * the marks.
 */
export type SidePaths = Readonly<{ old: string; out: string; planned: string; moves: string }>;
/**
 * Both sides where they are, and each larger, its middle at (0, 0). The first is made at build, so that a
 * lesson loads no geometry before a mark moves.
 */
export type CoverPaths = Readonly<Record<Side, Readonly<{ there: SidePaths; larger: SidePaths }>>>;

const largerTimes = 2.6;

/** The drawing of one state and its plan; until there is one, of the marks as they stand. */
export function coverPaths(state: CoverState, cover?: CoverSeen): CoverPaths {
  const side = (name: Side) => {
    const { frontTop, tail, archTop } = browOf(state, 'planned', name);
    const middle = { uMm: (frontTop.uMm + tail.uMm) / 2, vMm: (archTop.vMm + tail.vMm) / 2 + 1 };
    return {
      there: sidePaths(state, cover, name, 1, { uMm: 0, vMm: 0 }),
      larger: sidePaths(state, cover, name, largerTimes, middle),
    };
  };
  return { right: side('right'), left: side('left') };
}

function sidePaths(
  state: CoverState,
  cover: CoverSeen | undefined,
  side: Side,
  times: number,
  from: FacePoint,
): SidePaths {
  const way = side === 'left' ? times : -times;
  const at = ({ uMm, vMm }: FacePoint) =>
    `${(way * (uMm - from.uMm)).toFixed(2)},${(-times * (vMm - from.vMm)).toFixed(2)}`;
  const closed = (corners: readonly FacePoint[]) => `M${corners.map(at).join('L')}Z`;
  const drawn = outlineOf(browOf(state, 'old', side));
  const marked = browOf(state, 'planned', side);
  const plan = cover?.ok ? cover.plan.brows[side] : marked;
  return {
    old: drawn.ok ? closed(spreadShape(drawn, state.spread)) : '',
    out: cover?.ok ? cover.sides[side].outside.pieces.map(closed).join('') : '',
    planned: plannedPath(plan, at),
    moves: browMarks
      .filter((mark) => Math.abs(plan[mark].vMm - marked[mark].vMm) > shownFromMm)
      .map((mark) => `M${at(marked[mark])}L${at(plan[mark])}`)
      .join(''),
  };
}

/** A shorter move cannot be seen. */
const shownFromMm = 0.25;

function plannedPath(brow: Brow, at: (point: FacePoint) => string): string {
  const outline = outlineOf(brow);
  if (!outline.ok) return '';
  const curves = outlineCurves(outline);
  return `M${at(curves[0][0])}${curves.map(([, a, b, end]) => `C${at(a)} ${at(b)} ${at(end)}`).join('')}Z`;
}
