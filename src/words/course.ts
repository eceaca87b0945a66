/** The six strands in teaching order; the site shows those that have lessons. */
export const strands = [
  {
    id: 'hygiene',
    letter: 'H',
    title: 'Hygiene',
    line: 'How infection travels, what is clean, what is sterile',
  },
  {
    id: 'before-you-start',
    letter: 'B',
    title: 'Before you start',
    line: 'Consultation, health questions, consent, saying no',
  },
  {
    id: 'mapping',
    letter: 'M',
    title: 'Mapping',
    line: 'Midline, levels, front, arch and tail; left against right',
  },
  {
    id: 'skin-healing',
    letter: 'S',
    title: 'Skin healing',
    line: 'What each week looks like, and what is never normal',
  },
  {
    id: 'colour',
    letter: 'C',
    title: 'Colour theory',
    line: 'Skin and pigment as numbers; why brown heals grey or red',
  },
  {
    id: 'old-work',
    letter: 'R',
    title: 'Old work',
    line: 'Reading old pigment and old shape before a refresh',
  },
] as const;

export type StrandId = (typeof strands)[number]['id'];
