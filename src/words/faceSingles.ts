import type { FaceSingle } from '#lib/mapping/marks/markSet.ts';

/** The trade's names for the single marks of a face. */
export const faceSingleWords: Readonly<Record<FaceSingle, string>> = {
  glabella: 'glabella',
  nasion: 'nasion',
  subnasale: 'nose base',
  chin: 'chin',
};
