import { evidencePath } from './evidenceParts.ts';

/**
 * The site's sections: one label for one thing everywhere. A test holds this list against the built pages.
 */
export const mainSections = [
  { label: 'Lessons', path: '/lessons/' },
  { label: 'Calculators', path: '/calculators/' },
  { label: 'Practice', path: '/practice/' },
  { label: 'Rules', path: '/rules/' },
] as const;

export const footSections = [
  { label: 'Glossary', path: '/glossary/' },
  { label: 'Evidence', path: evidencePath },
  { label: 'Accuracy and limits', path: '/limits/' },
  { label: 'Cautions', path: '/cautions/' },
  { label: 'Accessibility', path: '/accessibility/' },
] as const;

/**
 * Sections that are reached from within others: no place in the navigation, a link on the pages they belong
 * to.
 */
export const innerSections = [
  { label: 'Sheets', path: '/sheets/', from: ['/calculators/', '/practice/'] },
] as const;
