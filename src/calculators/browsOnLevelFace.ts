import type { PointMm } from '#lib/geometry/point.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import type { BrowMark, FacePair, Side } from '#lib/mapping/marks/markSet.ts';
import type { BrowsOnFace } from '#lib/mapping/outline/tradeChecks.ts';
import type { BrowPoints } from './browFields.ts';
import { levelFaceMarks } from './levelFaceMarks.ts';

/**
 * Both brows on the level face. Its midline is x = 0 and its pupils lie on y = 0, so the picture is the
 * face's own frame, and its eyes and nose stay where they are.
 */
export function browsOnLevelFace(points: BrowPoints): BrowsOnFace {
  const of = (side: Side) => {
    const letter = side === 'right' ? 'R' : 'L';
    const place = ({ xMm, yMm }: PointMm): FacePoint => ({ uMm: side === 'right' ? -xMm : xMm, vMm: yMm });
    const face = (pair: Exclude<FacePair, 'pupil'>) => place(levelFaceMarks[`${pair}${letter}`]);
    const brow = (mark: BrowMark) => place(points[`${mark}${letter}`]);
    return {
      noseWing: face('noseWing'),
      innerCorner: face('innerCorner'),
      outerCorner: face('outerCorner'),
      frontLower: brow('frontLower'),
      frontTop: brow('frontTop'),
      archTop: brow('archTop'),
      archLower: brow('archLower'),
      tail: brow('tail'),
    };
  };
  return { right: of('right'), left: of('left') };
}
