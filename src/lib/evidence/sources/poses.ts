import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Studies of eyes that tilt, and of brows that move: by muscle, by gravity, after toxin. */
export const poseSources = {
  'eye-canting-2015': {
    kind: 'study', short: 'Canted eyes study 2015', authors: 'author list not in the copy read', year: 2015,
    title: 'Differences among deviations, genders, and observers in the perception of eye and nose asymmetry',
    where: 'Journal of Oral and Maxillofacial Surgery 73:1606–1614', doi: '10.1016/j.joms.2015.02.009', read: 'abstract', readOn,
  },
  'souza-cruz-2004': {
    kind: 'study', authors: 'Souza da Cruz JR, Velasco e Cruz AA', year: 2004,
    title: 'Quantification of frontalis muscle action',
    where: 'Arquivos Brasileiros de Oftalmologia 67:237–240', doi: '10.1590/S0004-27492004000200010', read: 'abstract', readOn,
  },
  'karlin-2021': {
    kind: 'study', authors: 'Karlin J', year: 2021,
    title: 'Gravity affects brow, eyelid position (report of a talk)',
    where: 'Healio Ophthalmology News, 17 February 2021', address: 'https://www.healio.com/news/ophthalmology/20210217/gravity-affects-brow-eyelid-position', read: 'whole', readOn,
  },
  'parabolic-flight': {
    kind: 'study', short: 'Parabolic flight study', authors: 'author list and year not in the copy read',
    title: 'The effect of short-term microgravity and hypergravity on eyelid and brow position',
    where: 'abstract on a research index', read: 'abstract', readOn,
  },
  'supine-lids-2024': {
    kind: 'study', short: 'Supine lid study 2024', authors: 'author list not in the copy read', year: 2024,
    title: 'The effect of supine versus upright positioning on eyelid height in the nonsurgical patient',
    where: 'Ophthalmic Plastic and Reconstructive Surgery', doi: '10.1097/IOP.0000000000002665', read: 'abstract', readOn,
  },
  'body-positions-3d': {
    kind: 'study', short: 'Body position study', authors: 'author list and year not in the copy read',
    title: 'Effect of sitting, standing, and supine body positions on facial soft tissue: detailed 3D analysis',
    where: 'abstract on a research index', read: 'abstract', readOn,
  },
  'midface-gravity-2020': {
    kind: 'study', short: 'Midface gravity study 2020', authors: 'author list not in the copy read', year: 2020,
    title: 'Gravity in midfacial aging: a 3-dimensional study',
    where: 'abstract on a research index', read: 'abstract', readOn,
  },
  'carruthers-2007': {
    kind: 'study', authors: 'Carruthers A, Carruthers J', year: 2007,
    title: 'Eyebrow height after botulinum toxin type A to the glabella',
    where: 'Dermatologic Surgery 33', doi: '10.1111/j.1524-4725.2006.32328.x', read: 'abstract', readOn,
  },
  'upper-face-toxin-2018': {
    kind: 'study', short: 'Upper face toxin trial 2018', authors: 'author list not in the copy read', year: 2018,
    title: 'The impact of upper face botulinum toxin injections on eyebrow height and forehead lines: a randomized controlled trial',
    where: 'Plastic and Reconstructive Surgery, November 2018', read: 'abstract', readOn,
  },
  'brow-descent-2019': {
    kind: 'review', short: 'Brow descent report 2019', authors: 'report of a study in Aesthetic Surgery Journal, May 2019', year: 2019,
    title: 'Botulinum and the brow', where: 'Dermatology Times', address: 'https://www.dermatologytimes.com/view/botulinum-and-brow', read: 'part', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
