import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Meta-analyses behind the shape of the practice. */
export const studySources = {
  'barbieri-2023': {
    kind: 'review',
    authors: 'Barbieri CA, Miller-Cotto D, Clerjuste SN, Chawla K',
    year: 2023,
    title: 'A meta-analysis of the worked examples effect on mathematics performance',
    where: 'Educational Psychology Review 35:35',
    doi: '10.1007/s10648-023-09745-1',
    read: 'abstract',
    readOn,
  },
  'tetzlaff-2025': {
    kind: 'review',
    authors: 'Tetzlaff L, Simonsmeier B, Peters T, Brod G',
    year: 2025,
    title: 'A cornerstone of adaptivity – a meta-analysis of the expertise reversal effect',
    where: 'Learning and Instruction',
    doi: '10.1016/j.learninstruc.2025.102142',
    read: 'abstract',
    readOn,
  },
  'brunmair-2019': {
    kind: 'review',
    authors: 'Brunmair M, Richter T',
    year: 2019,
    title: 'Similarity matters: a meta-analysis of interleaved learning and its moderators',
    where: 'Psychological Bulletin',
    doi: '10.1037/bul0000209',
    read: 'abstract',
    readOn,
  },
  'latimier-2021': {
    kind: 'review',
    authors: 'Latimier A, Peyre H, Ramus F',
    year: 2021,
    title: 'A meta-analytic review of the benefit of spacing out retrieval practice episodes on retention',
    where: 'Educational Psychology Review 33:959–987',
    doi: '10.1007/s10648-020-09572-8',
    read: 'abstract',
    readOn,
  },
  'van-der-kleij-2015': {
    kind: 'review',
    authors: 'Van der Kleij FM, Feskens RCW, Eggen TJHM',
    year: 2015,
    title: 'Effects of feedback in a computer-based learning environment on students’ learning outcomes',
    where: 'Review of Educational Research',
    doi: '10.3102/0034654314564881',
    read: 'abstract',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
