import type { View } from '#components/calculator/fields/MarkStage.tsx';

/**
 * Brows and eyes of the face with equal brows, and below `footMm` a strip where heights are drawn larger.
 * Picture millimetres, y down.
 */
export const tiltedView: View = { x: -78, y: -46, width: 156, height: 112 };
export const footMm = 18;
/** The height of both arches above the pupils on that face. */
export const archHeightMm = 21.2;
