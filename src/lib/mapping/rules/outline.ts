import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of the outline and its thickness. Ids are the addresses of their cards. */
export const outlineRules = [
  {
    id: 'thickness-straight-across',
    when: { question: 'thickness-measured', is: 'straight-up' },
    outcome: 'measure-again',
    facts: ['straight-up-too-thick-20-deg', 'straight-up-too-thick-30-deg'],
    disputedBy: ['thickness-medium-of-eye'],
    ...anywhere,
  },
  {
    id: 'equal-thickness-both-brows',
    when: { question: 'same-stations', is: false },
    outcome: 'measure-again',
    facts: ['thickness-equal', 'women-brows-measured', 'brow-sides-go-together'],
    disputedBy: ['own-thickness-raters'],
    ...anywhere,
  },
  {
    id: 'outline-looks-bolder',
    when: { question: 'outline-told-bolder', is: false },
    outcome: 'tell',
    facts: [
      'outline-looks-bolder',
      'client-sees-in-mirror',
      'thickness-women-asked',
      'thickness-medium-chosen',
      'thickness-thin-of-eye',
      'thickness-medium-of-eye',
      'thickness-thick-of-eye',
    ],
    disputedBy: [],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
