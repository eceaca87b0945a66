import type { PointMm } from '../../geometry/point.ts';
import { fitSimilarity } from '../../geometry/similarity.ts';
import { forBrowMarks, type BrowRecord } from '../marks/browRecord.ts';
import type { FacePoint } from '../marks/faceFrame.ts';
import { browMarks } from '../marks/markSet.ts';
import type { MarkSides } from './sides.ts';

/**
 * How the left brow sits against the mirrored right one: the same brow moved, turned and sized, and what is
 * left.
 */
export type BrowDecomposition = Readonly<{
  /** Shift of the brow's middle (mean of its five marks), left minus right: outward and up, mm. */
  shiftOutMm: number;
  shiftUpMm: number;
  /** Degrees; positive: the left brow's tail is turned up against its front. */
  tiltDeg: number;
  /** Left size over right size. */
  size: number;
  /** Shape that none of these explains, root mean square over the marks, mm. */
  residualMm: number;
  /** The same for each mark, mm. */
  residuals: BrowRecord<FacePoint>;
}>;
export type BrowDecompositionFit =
  | (BrowDecomposition & Readonly<{ ok: true }>)
  | Readonly<{ ok: false; reason: 'brow-marks-on-one-point' }>;

/**
 * Left against mirrored right by complex similarity, L ≈ s e^{iφ} R' + b, in the face's frame (see
 * fitSimilarity).
 */
export function decomposeBrows(sides: BrowRecord<Pick<MarkSides, 'right' | 'left'>>): BrowDecompositionFit {
  const plain = ({ uMm, vMm }: FacePoint): PointMm => ({ xMm: uMm, yMm: vMm });
  const fit = fitSimilarity(
    browMarks.map((mark) => plain(sides[mark].right)),
    browMarks.map((mark) => plain(sides[mark].left)),
  );
  if (!fit.ok) return { ok: false, reason: 'brow-marks-on-one-point' };
  return {
    ok: true,
    shiftOutMm: fit.shift.xMm,
    shiftUpMm: fit.shift.yMm,
    tiltDeg: fit.turnDeg,
    size: fit.scale,
    residualMm: fit.residualMm,
    residuals: forBrowMarks((mark) => {
      const left = fit.residuals[browMarks.indexOf(mark)];
      return { uMm: left?.xMm ?? 0, vMm: left?.yMm ?? 0 };
    }),
  };
}
