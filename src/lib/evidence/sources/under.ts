import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Studies of missing brow hair and of how brows move. */
export const underSources = {
  'anzai-2016': {
    kind: 'study',
    authors: 'Anzai A, Donati A, Valente NYS, Romiti R, Tosti A',
    year: 2016,
    title: 'Isolated eyebrow loss in frontal fibrosing alopecia: relevance of early diagnosis and treatment',
    where: 'British Journal of Dermatology 175:1099–1101',
    doi: '10.1111/bjd.14750',
    read: 'part',
    readOn,
  },
  'son-2017': {
    kind: 'study',
    short: 'Son 2017',
    authors:
      'Department of Plastic and Reconstructive Surgery, Keimyung University (corresponding author Son D; full list not in the copy read)',
    year: 2017,
    title: 'Changes in eyebrow position and movement with aging',
    where: 'Archives of Plastic Surgery 44:65–71',
    doi: '10.5999/aps.2017.44.1.65',
    read: 'abstract',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
