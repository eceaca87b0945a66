import type { View } from '../fields/MarkStage.tsx';

/** The part of the face the midline needs: above the brows to below the chin. Picture millimetres, y down. */
export const midlineView: View = { x: -76, y: -48, width: 152, height: 174 };
