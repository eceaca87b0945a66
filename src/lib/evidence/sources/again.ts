import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Numbed skin. */
export const againSources = {
  'tahir-2006': {
    kind: 'study',
    authors: 'Tahir A and others',
    year: 2006,
    title:
      'The effect of local anaesthetic cream […] applied with an occlusive dressing on skin thickness. Does it matter?',
    where: 'Journal of Plastic, Reconstructive and Aesthetic Surgery 59:404–408',
    doi: '10.1016/j.bjps.2005.09.027',
    read: 'abstract',
    readOn,
  },
  'blanching-1990': {
    kind: 'study',
    short: 'Blanching study 1990',
    authors: 'authors not in the copy read',
    year: 1990,
    title:
      'Local blanching after epicutaneous application of […] cream. A double-blind randomized study among 50 healthy volunteers',
    where: 'Dermatologica 181:38–40',
    read: 'abstract',
    readOn,
  },
  'fda-numbing-2024': {
    kind: 'review',
    short: 'FDA warning, told 2024',
    authors: 'news page of a pharmacy',
    year: 2024,
    title: 'High-strength lidocaine skin creams can cause seizures, heart trouble, FDA warns',
    where: 'patient resources',
    address:
      'https://catesstreetpharmacy.com/patient-resources/article/1711540707323/high-strength-lidocaine-skin-creams-can-cause-seizures-heart-trouble-fda-warns',
    read: 'whole',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
