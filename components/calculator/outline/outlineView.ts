import type { View } from '../fields/MarkStage.tsx';

/**
 * Both brows and the eyes under them, and below `footMm` one station drawn larger. Picture millimetres, y
 * down.
 */
export const outlineView: View = { x: -66, y: -36, width: 132, height: 84 };
export const footMm = 11;
