import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of what lies under the shape. Ids are the addresses of their cards. */
export const underRules = [
  {
    id: 'nothing-under-it-nothing-drawn',
    when: { question: 'nothing-under-a-part', is: true },
    outcome: 'refuse',
    facts: ['shape-sits-on-something', 'off-bone-moves', 'follow-the-cowlick', 'tail-falls-mm'],
    disputedBy: ['brow-against-rim-people', 'outer-end-groups'],
    ...anywhere,
  },
  {
    id: 'not-over-changed-skin',
    when: { question: 'skin-changed-or-new-loss', is: true },
    outcome: 'physician',
    facts: ['not-over-changed-skin', 'brow-loss-comes-first'],
    disputedBy: [],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
