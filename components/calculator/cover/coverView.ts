import type { View } from '../fields/MarkStage.tsx';

/** Both brows and the eyes under them, and below `footMm` one brow larger. Picture millimetres, y down. */
export const coverView: View = { x: -66, y: -34, width: 132, height: 92 };
export const footMm = 9;
