import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of front, tail and arch. Ids are the addresses of their cards. */
export const placingRules = [
  {
    id: 'fronts-equally-far',
    when: { not: { question: 'fronts-measured-from', is: 'bridge' } },
    outcome: 'measure-again',
    facts: ['fronts-equally-far', 'nose-off-midline-mm', 'client-sees-in-mirror'],
    disputedBy: ['front-shift-with-nose'],
    ...anywhere,
  },
  {
    id: 'name-the-front-anchor',
    when: { question: 'front-anchor-named', is: false },
    outcome: 'ask',
    facts: [
      'front-above-an-anchor',
      'nose-wider-men',
      'nose-wider-women',
      'nose-as-wide-as-gap',
      'wing-beyond-corner-first-mm',
      'wing-beyond-corner-second-mm',
    ],
    disputedBy: ['nose-as-wide-kenya-men', 'nose-as-wide-kenya-women', 'nose-wider-nigeria'],
    ...anywhere,
  },
  {
    id: 'tail-inside-the-line',
    when: {
      any: [
        { question: 'tail-past-the-line', is: true },
        { question: 'tail-tip-in-the-band', is: false },
      ],
    },
    outcome: 'tell',
    facts: ['tail-inside-the-line', 'tail-tip-in-the-band', 'lengths-equal'],
    disputedBy: ['tail-falls-mm'],
    ...anywhere,
  },
  {
    id: 'one-arch-for-both-sides',
    when: { question: 'arches-planned', is: 'two' },
    outcome: 'refuse',
    facts: ['one-arch-for-both', 'example-error-mm'],
    disputedBy: ['most-see-mm'],
    ...anywhere,
  },
  {
    id: 'arch-rules-are-starting-points',
    when: { question: 'arch-rule-named', is: false },
    outcome: 'ask',
    facts: [
      'arch-women-of-eye-width',
      'arch-women-spread',
      'arch-two-thirds',
      'arch-rules-artists',
      'arch-rules-faces',
      'arch-rules-p-value',
      'arch-by-golden-section',
      'golden-point-moves-mm',
    ],
    disputedBy: ['arch-four-places-raters', 'arch-near-outer-corner-people'],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
