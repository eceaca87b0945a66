import type { Bones } from '#lib/face/bones.ts';
import type { BrowPlan } from '#lib/face/browPlan.ts';
import type { BrowHair, Form } from '#lib/face/form.ts';

/** Measured skin, CIE L*a*b* (D65). An input of its own: nothing of bones or hair follows from it. */
export type Skin = Readonly<{ l: number; a: number; b: number }>;

/** One invented person, as said on one line: what differs from the default face. */
export type PersonPlan = Readonly<{
  bones: Partial<Bones>;
  form: Partial<Omit<Form, 'browHair'>>;
  browHair?: Partial<BrowHair>;
  brow: Partial<BrowPlan>;
  /** The right brow moved outwards and up: a natural difference. */
  rightMoved?: Readonly<{ outMm: number; upMm: number }>;
  rollDeg?: number;
  skin: Skin;
}>;
