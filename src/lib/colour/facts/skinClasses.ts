import { published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { itaEdgesDeg } from '../spaces/ita.ts';

const reviewed = '2026-11-25';

const edge = (value: number, quote: string): Fact => ({
  value,
  unit: '°',
  backing: published('dermatest-colorimetry', 'table below the formula', quote),
  reviewed,
  caveat:
    'The scheme of Chardon and Del Bino. Another in use has eight classes: name the scheme beside a class.',
});

/** The classes of skin by its typology angle. */
export const skinClassFacts = {
  'ita-very-light-above-deg': edge(itaEdgesDeg[0], '55° < ITA° Very light'),
  'ita-light-above-deg': edge(itaEdgesDeg[1], '41° < ITA° < 55° Light'),
  'ita-intermediate-above-deg': edge(itaEdgesDeg[2], '28° < ITA° < 41° Intermediate'),
  'ita-tan-above-deg': edge(itaEdgesDeg[3], '10° < ITA° < 28° Tanned'),
  'ita-dark-up-to-deg': edge(itaEdgesDeg[4], '-30° < ITA° < 10° Brown'),
} as const satisfies Readonly<Record<string, Fact | Practice>>;
