import type { BrowRecord } from './browRecord.ts';
import type { FacePoint } from './faceFrame.ts';
import type { Side } from './markSet.ts';

/**
 * The five marks of one brow in the face's frame: uMm outward from the midline, vMm up from the pupil level.
 */
export type Brow = BrowRecord<FacePoint>;

/** Both brows. Left and right are the client's own. */
export type Brows = Readonly<Record<Side, Brow>>;
