import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of rest, raised and lying. Ids are the addresses of their cards. */
export const posesRules = [
  {
    id: 'compare-like-with-like',
    when: {
      any: [
        { question: 'same-pose', is: false },
        { question: 'same-posture', is: false },
        { question: 'same-skin', is: false },
      ],
    },
    outcome: 'refuse',
    facts: ['upright-to-draw', 'side-marks-moved-lying', 'lying-faces-photographed'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'map-at-rest-and-upright',
    when: {
      any: [
        { question: 'mapped-at-rest', is: false },
        { question: 'mapped-upright', is: false },
        { question: 'mapped-on-normal-skin', is: false },
      ],
    },
    outcome: 'measure-again',
    facts: [
      'map-at-rest',
      'upright-to-draw',
      'brow-raise-least-mm',
      'brow-raise-most-mm',
      'brow-rise-in-space-mm',
      'brow-rise-in-space-people',
      'eye-opening-upright-mm',
      'eye-opening-lying-mm',
    ],
    disputedBy: ['lying-faces-photographed'],
    ...anywhere,
  },
  {
    id: 'let-the-brows-settle',
    when: { question: 'brows-still-settling', is: true },
    outcome: 'wait',
    facts: [
      'settle-after-toxin',
      'brow-lower-after-toxin-weeks',
      'brow-highest-after-toxin-weeks',
      'brow-followed-after-toxin-weeks',
      'brow-still-lower-months',
    ],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'measure-again-eyes-closed',
    when: { question: 'eyes-closed-reading', is: false },
    outcome: 'measure-again',
    facts: ['measure-again-eyes-closed'],
    disputedBy: [],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
