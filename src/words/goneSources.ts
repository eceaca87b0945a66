import type { Subject } from '#lib/catalogue.ts';

/** Sources that nothing rests on any more, by the ids of old links to them: such a link finds them named. */
export const goneSources: Partial<Readonly<Record<Subject, Readonly<Record<string, string>>>>> = {
  mapping: { 'mangasarian-meyer': 'Mangasarian and Meyer, Nonlinear perturbation of linear programs' },
};
