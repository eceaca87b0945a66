import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** How much pigment is put into skin, and what stays. */
export const healedSources = {
  'engel-2008': {
    kind: 'study',
    authors:
      'Engel E, Santarelli F, Vasold R, Maisch T, Ulrich H, Prantl L, König B, Landthaler M, Bäumler W',
    year: 2008,
    title: 'Modern tattoos cause high concentrations of hazardous pigments in skin',
    where: 'Contact Dermatitis 58:228–233 (abstract in the repository of the University of Regensburg)',
    read: 'abstract',
    readOn,
  },
  'pig-28-days': {
    kind: 'study',
    short: '28 days in pig skin',
    authors: 'Authors not in the copy read',
    title:
      'Tattoo pigment biokinetics in vivo in a 28-day porcine model: elements undergo fast distribution to lymph nodes and reach steady state after 7 days',
    where: 'abstract, read.qxmd.com 38402858',
    read: 'abstract',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
