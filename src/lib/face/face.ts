import { defaultBones, landmarksFrom, type Bones } from './bones.ts';
import { defaultBrowPlan, plannedBrow, type BrowPlan } from './browPlan.ts';
import { defaultForm, type Form } from './form.ts';
import type { Landmarks } from './landmarks.ts';

/** A practice face: where its marks are, how it is built, and how far the head is rolled in the picture. */
export type Face = Readonly<{ landmarks: Landmarks; form: Form; rollDeg: number }>;

/** A symmetric face (but for a lean in its bones) with a brow planned on its own anchors. */
export function plannedFace(
  bones: Partial<Bones> = {},
  form: Partial<Form> = {},
  plan: Partial<BrowPlan> = {},
  rollDeg = 0,
): Face {
  const all = { ...defaultBones, ...bones };
  const brow = plannedBrow(all, { ...defaultBrowPlan, ...plan });
  return { landmarks: landmarksFrom(all, brow, brow), form: { ...defaultForm, ...form }, rollDeg };
}

/**
 * The default face passes the site's own trade checks: fronts on the inner-corner vertical (the nose wing
 * stands within 0.5 mm of it), tails inside the line nose wing – outer corner, one arch share on both sides.
 */
export const defaultFace: Face = plannedFace();
