import type { Brow } from '../mapping/marks/brow.ts';
import { forBrowMarks } from '../mapping/marks/browRecord.ts';
import type { FacePoint } from '../mapping/marks/faceFrame.ts';
import { seedFrom } from '../quantities/seed.ts';
import type { Face } from './face.ts';
import type { Form } from './form.ts';
import { browOf, type BrowSpots } from './landmarks.ts';
import { practiceOldShape } from './oldShape.ts';
import type { Spots } from './spot.ts';

/** Corners in the face's frame as spots of their own side. */
function spotsOf(corners: readonly FacePoint[]): Spots {
  return corners.map(({ uMm, vMm }) => [uMm, vMm]);
}

function browInFrame(spots: BrowSpots): Brow {
  return forBrowMarks((mark) => {
    const [uMm, vMm] = spots[mark];
    return { uMm, vMm };
  });
}

/**
 * The same face with an older tattoo under each brow, always the same for a seed; no mark moves. The two
 * sides were drawn by one hand on one day, yet never alike: each has its own stream. `pigment` is its colour
 * as read on the skin, L*a*b*.
 */
export function withOldWork(face: Face, seed: number, pigment?: Form['oldPigment']): Face {
  const shape = (side: 'right' | 'left') =>
    spotsOf(
      practiceOldShape(
        browInFrame(browOf(face.landmarks[side])),
        side === 'right' ? seed : seedFrom('old-work-left', seed),
      ).corners,
    );
  return {
    ...face,
    form: {
      ...face.form,
      oldWork: { right: shape('right'), left: shape('left') },
      ...(pigment && { oldPigment: pigment }),
    },
  };
}
