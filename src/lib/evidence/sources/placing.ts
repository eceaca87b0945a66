import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** What is printed about fronts, tails, and the width of noses against the gap of the eyes. */
export const placingSources = {
  'yalcinkaya-2014': {
    kind: 'review', short: 'Eyebrow review 2014', authors: 'author list not in the copy read', year: 2014,
    title: 'Aesthetic analysis of the ideal eyebrow shape and position',
    where: 'European Archives of Oto-Rhino-Laryngology', doi: '10.1007/s00405-014-3356-0', read: 'abstract', readOn,
  },
  'alex-2004': {
    kind: 'review', authors: 'Alex JC', year: 2004, title: 'Aesthetic considerations in the elevation of the eyebrow',
    where: 'Facial Plastic Surgery 20:193–198', doi: '10.1055/s-2004-861774', read: 'copy', readOn,
  },
  'glass-2014': {
    kind: 'study', authors: 'Dagi Glass LR and others (author list not in the copy read)', short: 'Dagi Glass 2014', year: 2014,
    title: 'The lateral brow: position in relation to age, gender, and ethnicity',
    where: 'Ophthalmic Plastic and Reconstructive Surgery 30:295–300', doi: '10.1097/IOP.0000000000000095', read: 'abstract', readOn,
  },
  'saudi-canons-2015': {
    kind: 'study', short: 'Arabian canon study 2015', authors: 'author not in the copy read', year: 2015,
    title: 'The validity of three neo-classical facial canons in young adults originating from the Arabian Peninsula',
    where: 'Head & Face Medicine 11:4', read: 'abstract', readOn,
  },
  'nigerian-face-2018': {
    kind: 'study', short: 'Nigerian canon study 2018', authors: 'author list not in the copy read', year: 2018,
    title: 'Anthropometric analysis of the Nigerian face: any conformity to the neoclassical canons?',
    where: 'Journal of Craniofacial Surgery 29:1978–1982', doi: '10.1097/SCS.0000000000004831', read: 'abstract', readOn,
  },
  'sarna-2022': {
    kind: 'study', authors: 'Sarna K, Osundwa TM, Kamau M, Sonigra KJ', year: 2022, title: 'Analysis of neoclassical canons in adult Kenyans of Indian descent',
    where: 'Craniomaxillofacial Trauma & Reconstruction 16:55–61', doi: '10.1177/19433875221077005', read: 'abstract', readOn,
  },
  'farkas-1985': {
    kind: 'study', authors: 'Farkas LG, Hreczko TA, Kolar JC, Munro IR', year: 1985,
    title: 'Vertical and horizontal proportions of the face in young adult North American Caucasians: revision of neoclassical canons',
    where: 'Plastic and Reconstructive Surgery', read: 'abstract', readOn,
  },
  'face-table-2019': {
    kind: 'study', short: 'Face measures, table of 2019', authors: 'author list and group not in the copy read', year: 2019,
    title: 'Table 9, vertical and horizontal measurements (title of the article not in the copy read)',
    where: 'Maxillofacial Plastic and Reconstructive Surgery', doi: '10.1186/s40902-019-0191-7', read: 'part', readOn,
  },
  'point-line-calculator': {
    kind: 'data', short: 'Point and line, solved example', authors: 'Calculator Academy', title: 'Distance from point to line calculator, example problem 1',
    where: 'calculator.academy', address: 'https://calculator.academy/distance-from-point-to-line-calculator/', read: 'whole', readOn,
  },
  'point-line-exercise': {
    kind: 'data', short: 'Point and line, exercise', authors: 'author not named', title: 'Distance of a point from a line, exercise with answers',
    where: 'math-tutor-singapore.com', address: 'https://math-tutor-singapore.com/distance-of-a-point-from-a-line', read: 'whole', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
