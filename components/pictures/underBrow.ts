import { browHairs } from '#components/pictures/face/brow/browHairs.ts';
import { browOutline, lowerV } from '#components/pictures/face/brow/browEdges.ts';
import { hairStrokes } from '#components/pictures/face/brow/hairPath.ts';
import { pathText } from '#components/pictures/face/pathText.ts';
import { levelFace } from '#lib/face/levelFace.ts';
import { browOf } from '#lib/face/landmarks.ts';
import type { Spot } from '#lib/face/spot.ts';
import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import { plannedLeft } from '#calculators/hairAndBone.ts';
import type { UnderBrow } from './UnderOverlay.tsx';

const brow = browOf(levelFace.face.landmarks.left);
const frontMm = brow.frontLower[0];
/** Picture millimetres: 0 at the outline's front, y down. */
const place = ([u, v]: Spot): Spot => [u - frontMm, -v];
const hairs = browHairs(brow, { count: 230, gaps: 0.05, sparseTail: 0 }, drawFrom(seedFrom('under', 11)));

/**
 * The left brow of the level face for the figure of hair and bone: made at build, so that the drawing code
 * stays off the phone.
 */
export const underBrow: UnderBrow = {
  outline: pathText(browOutline(brow), place, 2),
  hairs: hairs.map((hair): UnderBrow['hairs'][number] => {
    const [alongMm, downMm] = place(hair.root);
    return [
      Number(alongMm.toFixed(1)),
      Number(downMm.toFixed(1)),
      Number(place(hair.tip)[0].toFixed(1)),
      pathText(hairStrokes([hair], 1), place, 1),
    ];
  }),
  lowerEdgeMm: Array.from({ length: 21 }, (_, i) =>
    Number(lowerV(brow, frontMm + (plannedLeft.lengthMm * i) / 20).toFixed(2)),
  ),
};
