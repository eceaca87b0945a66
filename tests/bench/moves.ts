import { markUncertaintyMm, budgetMm } from '#lib/mapping/uncertainty/budget.ts';
import { coverMarginFactor } from '#lib/mapping/numbers/plan.ts';
import { choices } from '../lib/mapping/faces.ts';
import { movedFace, ourMove, type Moved } from './movedMark.ts';
import { plainMove } from './plainMove.ts';

const markMm = markUncertaintyMm({ ...choices, budgetMm: budgetMm(choices.budget) });

/** Faces of seeds 0 to 15. */
export const faces: readonly Moved[] = Array.from({ length: 16 }, (_, seed) => movedFace(seed));
export const library = (face: Moved) => ourMove(face);
export const plainly = ({ set, old }: Moved) => plainMove(set, old, markMm, coverMarginFactor * markMm);
