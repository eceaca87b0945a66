import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Thickness of brows, what people like of it, the curves an outline is made of, and how one is planned. */
export const outlineSources = {
  'feminine-eyebrows': {
    kind: 'study',
    short: 'Eyebrows of 3600 women',
    authors: 'author list and year not in the copy read',
    title: 'Morphometric characteristics of feminine eyebrows: variations with ethnicities and age',
    where: 'abstract on a research index',
    read: 'abstract',
    readOn,
  },
  'hwang-2018': {
    kind: 'study',
    authors: 'Hwang K, Kim H',
    year: 2018,
    title: 'Perceptions of healthy-looking and sexy-looking brow thickness',
    where: 'Journal of Craniofacial Surgery, published ahead of print',
    read: 'abstract',
    readOn,
  },
  'peissig-2025': {
    kind: 'study',
    authors: 'Peissig J, Brennan K, Salamone R',
    year: 2025,
    title: 'Perceived attractiveness related to eyebrows (title in part)',
    where: 'Vision Sciences Society, poster abstract',
    read: 'abstract',
    readOn,
  },
  'beam-tables': {
    kind: 'data',
    short: 'Slope and deflection tables',
    authors: 'author not named in the part read',
    title: 'Strength of materials, appendix B: slope and deflection tables',
    where: 'engineeringmechanicsoer.github.io',
    address: 'https://engineeringmechanicsoer.github.io/StrengthBook/Appendix%20B.html',
    read: 'part',
    readOn,
  },
  'parallel-lines-up': {
    kind: 'data',
    short: 'Parallel lines, solved exercise',
    authors: 'author not named',
    title: 'The distance between the parallel lines 3x − 4y + 7 = 0 and 3x − 4y + 5 = 0',
    where: 'cdquestions.com',
    address:
      'https://cdquestions.com/exams/questions/the-distance-between-the-parallel-lines-3x-4y-7-0-67a5b26e683fd57856a52df6',
    read: 'whole',
    readOn,
  },
  'parallel-lines-down': {
    kind: 'data',
    short: 'Parallel lines, second exercise',
    authors: 'author not named',
    title: 'The distance between the parallel lines 3x + 4y + 7 = 0 and 3x + 4y − 5 = 0',
    where: 'vedantu.com',
    address:
      'https://www.vedantu.com/question-answer/distance-between-the-parallel-lines-3x-class-12-maths-cbse-5eff55d4c820cf0a266f9b78',
    read: 'whole',
    readOn,
  },
  'goldfarb-idnani-1983': {
    kind: 'study',
    authors: 'Goldfarb D, Idnani A',
    year: 1983,
    title: 'A numerically stable dual method for solving strictly convex quadratic programs',
    where: 'Mathematical Programming 27:1–33',
    doi: '10.1007/BF02591962',
    read: 'abstract',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
