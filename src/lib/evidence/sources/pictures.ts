import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/**
 * What a camera's distance and a head's position do to pictures of faces; pinhole sums with printed answers.
 */
export const pictureSources = {
  'paskhover-2018': {
    kind: 'study',
    authors: 'Paskhover B, Fried O and others (author list not in the copy read)',
    year: 2018,
    title: 'Nasal distortion in short-distance photographs: the selfie effect',
    where: 'JAMA Facial Plastic Surgery; the university’s summary and the first page of the letter',
    address: 'https://phys.org/news/2018-03-distortive-effects-short-distance-nasal.html',
    read: 'copy',
    readOn,
  },
  'derakhshan-2024': {
    kind: 'study',
    authors: 'Derakhshan A, Gadkaree SK, Barbarite ER, Lindeborg MM, Bhama PK, Shaye DA',
    year: 2024,
    title: 'Quantifying facial distortion in modern digital photography',
    where: 'The Laryngoscope 134:1234–1238',
    address: 'https://digitalcommons.providence.org/publications/8544/',
    read: 'abstract',
    readOn,
  },
  'pressler-2022': {
    kind: 'study',
    authors: 'Pressler MP, Kislevitz ML, Davis JJ, Amirlak B',
    year: 2022,
    title:
      'Size and perception of facial features with selfie photographs, and their implication in rhinoplasty and facial plastic surgery',
    where: 'Plastic and Reconstructive Surgery',
    doi: '10.1097/prs.0000000000008961',
    read: 'abstract',
    readOn,
  },
  'pirayesh-2023': {
    kind: 'study',
    authors:
      'Pirayesh Z, Hassanzadeh-Samani S, Farzan A, Rohban MH, Ghorbanimehr MS, Mohammad-Rahimi H, Motamedian SR',
    year: 2023,
    title:
      'A deep learning framework to scale linear facial measurements to actual size using horizontal visible iris diameter: a study on an Iranian population',
    where: 'Scientific Reports 13:13755',
    doi: '10.1038/s41598-023-40839-6',
    read: 'abstract',
    readOn,
  },
  'head-position-2019': {
    kind: 'study',
    short: 'Head position 2019',
    authors: 'author list not in the copy read',
    year: 2019,
    title: 'Reproducibility of natural head position assessed with stereophotogrammetry',
    where: 'abstract on a research index',
    address:
      'https://www.researchgate.net/publication/335785175_Reproducibility_of_Natural_Head_Position_assessed_with_stereophotogrammetry',
    read: 'abstract',
    readOn,
  },
  'pinhole-cup': {
    kind: 'data',
    short: 'Pinhole sum, cup',
    authors: 'Física exe',
    title: 'A cup before a camera obscura, worked',
    where: 'Optics, propagation of light',
    address: 'https://fisicaexe.com.br/en/physics0/optics/propagation/propagation1_hs1/propagation1_hs1.html',
    read: 'whole',
    readOn,
  },
  'pinhole-man': {
    kind: 'data',
    short: 'Pinhole sum, man',
    authors: 'an examination question with its answer',
    title: 'A man before a pinhole camera',
    where: 'question and worked answer',
    address:
      'https://www.supergb.com/cbt/assessment/d79a7335-1390-41a3-bc6a-5a13b5508f00/question/fc6f04a3-449e-4c39-9bab-856380671fd6',
    read: 'whole',
    readOn,
  },
  'pinhole-structure': {
    kind: 'data',
    short: 'Pinhole sum, building',
    authors: 'a question with its answer',
    title: 'A structure of 10 m seen from 20 m',
    where: 'question and worked answer',
    address:
      'https://interviewsolution.com/discussion/assuming-that-a-10m-high-structure-is-observed-fro-995748',
    read: 'whole',
    readOn,
  },
  'rotation-60': {
    kind: 'data',
    short: 'Rotation, worked',
    authors: 'worked example',
    title: 'Rotate (1, 2, 3) about the axis (0, 1, 0) by 60 degrees',
    where: 'problem with worked answer',
    address: 'https://math-gpt.org/problems/question/rotate-123-around-axis-010-for-60-degrees',
    read: 'copy',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
