import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of the midline. Ids are the addresses of their cards. */
export const midlineRules = [
  {
    id: 'brows-never-feed-the-midline',
    when: { question: 'midline-uses-brows', is: true },
    outcome: 'refuse',
    facts: [
      'fronts-uneven',
      'front-shift-men-mm',
      'front-shift-women-mm',
      'front-shift-with-nose',
      'front-shift-second-study-mm',
    ],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'take-the-midline-from-many-marks',
    when: { question: 'midline-marks', below: 4 },
    outcome: 'measure-again',
    facts: ['nose-off-midline-mm', 'biweight-constant'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'which-mark-not-to-trust',
    when: { question: 'marks-not-trusted', atLeast: 1 },
    outcome: 'leave-out',
    facts: ['biweight-constant', 'trusted-from-weight', 'scatter-floor-mm'],
    disputedBy: [],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
