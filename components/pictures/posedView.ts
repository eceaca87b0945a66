import type { View } from '#components/calculator/fields/MarkStage.tsx';

/** The posed face's paper: picture millimetres, y down, pupils at 0. */
export const posedView: View = { x: -80, y: -56, width: 160, height: 186 };
