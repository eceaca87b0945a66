import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of photographs. Ids are the addresses of their cards. */
export const picturesRules = [
  {
    id: 'from-a-photo-heights-only',
    when: {
      all: [
        { question: 'read-from', is: 'photo' },
        {
          any: [
            { question: 'read-what', is: 'width' },
            { question: 'photo-level-and-resting', is: false },
          ],
        },
      ],
    },
    outcome: 'refuse',
    facts: [
      'photo-measures-tried',
      'photo-measures-reliable',
      'second-photo-mm',
      'same-photo-again-mm',
      'photo-error-two-people-mm',
      'iris-width-mm',
      'iris-width-second-study-mm',
    ],
    disputedBy: ['photo-error-near-eye-mm'],
    ...anywhere,
  },
  {
    id: 'ask-if-mirrored',
    when: {
      all: [
        { question: 'read-from', is: 'photo' },
        { question: 'mirror-known', is: false },
      ],
    },
    outcome: 'ask',
    facts: ['ask-if-mirrored', 'consent-before-pictures'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'a-turn-fakes-widths',
    when: {
      all: [
        { question: 'read-from', is: 'photo' },
        { question: 'front-and-tail-opposite', is: true },
      ],
    },
    outcome: 'refuse',
    facts: ['turn-3-deg-tail-mm', 'turn-3-deg-front-mm', 'turn-3-deg-near-tail-mm', 'nose-off-like-turn-deg'],
    disputedBy: ['nose-off-midline-mm'],
    ...anywhere,
  },
  {
    id: 'near-cameras-shrink',
    when: {
      all: [
        { question: 'read-from', is: 'photo' },
        { question: 'camera-distance-cm', below: 150 },
      ],
    },
    outcome: 'measure-again',
    facts: [
      'brow-straight-mm',
      'brow-from-30-cm-mm',
      'near-midface-taller',
      'nearest-midface-taller',
      'selfie-nose-longer',
      'selfie-nose-longer-farther',
      'near-nose-base-wider',
      'near-nose-tip-wider',
    ],
    disputedBy: ['brow-chord-mm', 'brow-along-skin-mm'],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
