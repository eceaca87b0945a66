import type { calculatorWords } from './calculators.ts';

type Id = keyof typeof calculatorWords;

/**
 * Which part of the course each calculator serves, and its place in the list: the order of the work at the
 * chair.
 */
const strandOf = {
  'midline-and-sides': 'Mapping',
  'usual-difference': 'Mapping',
  'level-line': 'Mapping',
  'two-readings': 'Mapping',
  'front-and-tail': 'Mapping',
  'arch-placement': 'Mapping',
  'hair-and-bone': 'Mapping',
  'outline-and-cover': 'Mapping',
  'cover-the-old-shape': 'Old work',
  'measuring-error': 'Mapping',
  pose: 'Mapping',
  'after-the-first-pass': 'Mapping',
  'strokes-and-dots': 'Skin healing',
  'skin-reading': 'Colour theory',
  'mix-by-drops': 'Colour theory',
  'which-hue': 'Colour theory',
  'find-a-recipe': 'Colour theory',
  'why-it-healed-this-way': 'Colour theory',
} as const satisfies Readonly<Record<Id, string>>;

const isId = (id: string): id is Id => Object.hasOwn(strandOf, id);
const ids = Object.keys(strandOf).filter(isId);

/** Calculators by strand. */
export const calculatorGroups = [...new Set(Object.values(strandOf))].map((strand) => ({
  strand,
  ids: ids.filter((id) => strandOf[id] === strand),
}));
