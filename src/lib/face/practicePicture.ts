import { straightPose, type HeadPose } from '../mapping/pose/headPose.ts';
import { drawFrom, seedFrom } from '../quantities/seed.ts';

/** How a practice picture was taken: straight from far, with the head turned, or by a near camera. */
export type PracticePicture = Readonly<{
  kind: 'straight' | 'turned' | 'near';
  pose: HeadPose;
  /** The model answer to "may I judge widths, left against right, or lengths?" */
  mayJudgeWidths: boolean;
}>;

export const straightPicture: PracticePicture = {
  kind: 'straight',
  pose: straightPose,
  mayJudgeWidths: true,
};

/**
 * Turned so far that front and tail show it, and never so far that a reader sees a profile coming, degrees.
 */
const turnDeg = { least: 4, most: 9 } as const;
/** A turned head is taken from the usual distance, a near one from a bent arm's length, mm. */
const usualCameraMm = 1500;
const nearCameraMm = { least: 240, most: 400 } as const;

/** The picture that a seed takes: half of them turned to either side, half from near. Spreads assumed. */
export function practicePicture(seed: number): PracticePicture {
  const draw = drawFrom(seedFrom('picture', seed));
  const kind = draw() < 0.5 ? 'turned' : 'near';
  const side = draw() < 0.5 ? -1 : 1;
  const share = draw();
  if (kind === 'near') return near(share);
  const pose: HeadPose = {
    ...straightPose,
    turnDeg: side * (turnDeg.least + (turnDeg.most - turnDeg.least) * share),
    cameraMm: usualCameraMm,
  };
  return { kind, pose, mayJudgeWidths: false };
}

/** A picture from near, for drills in which a turned head would leave two right answers. */
export function nearPicture(seed: number): PracticePicture {
  return near(drawFrom(seedFrom('near-picture', seed))());
}

/** The camera at a share of the way from the nearest place to the furthest that still counts as near. */
function near(share: number): PracticePicture {
  return {
    kind: 'near',
    pose: {
      ...straightPose,
      cameraMm: nearCameraMm.least + (nearCameraMm.most - nearCameraMm.least) * share,
    },
    mayJudgeWidths: false,
  };
}
