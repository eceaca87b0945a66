import type { View } from '../fields/MarkStage.tsx';

/** Both brows and eyes, with room above for the numbers of the rules. Picture millimetres, y down. */
export const archView: View = { x: -66, y: -50, width: 132, height: 90 };
