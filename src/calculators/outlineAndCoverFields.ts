import type { FrontAnchor } from '#lib/mapping/placing/anchorDistances.ts';
import type { FrontEdge } from '#lib/mapping/placing/drawnLengths.ts';
import { exampleErrorMm } from '#lib/mapping/numbers/start.ts';
import { browFields, type BrowPoints } from './browFields.ts';
import { choiceField, numberField } from './fields.ts';

export type OutlineAndCoverState = BrowPoints &
  Readonly<{
    /** The learner's own station, % of the length from the front. */
    station: number;
    edge: FrontEdge;
    anchor: FrontAnchor;
    error: number;
    readings: number;
  }>;

/**
 * The inputs without the sums, which a page fetches later. Choices are written out: the library's lists would
 * bring its sums along.
 */
export const outlineAndCoverFields = {
  id: 'outline-and-cover',
  fields: {
    ...browFields(),
    station: numberField('station', 90, { unit: '%', lo: 5, hi: 98, step: 1, decimals: 0 }),
    edge: choiceField<FrontEdge>('edge', 'frontLower', ['frontLower', 'frontTop']),
    anchor: choiceField<FrontAnchor>('anchor', 'inner-corner', [
      'nose-wing',
      'inner-corner',
      'nostril-middle',
    ]),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
} as const;
