/**
 * Places for bottles of one's own beside the palette. The last number of an id is the place that files and
 * links name.
 */
export const ownSlots = [
  'own1',
  'own2',
  'own3',
  'own4',
  'own5',
  'own6',
  'own7',
  'own8',
  'own9',
  'own10',
  'own11',
  'own12',
] as const;
export type OwnSlot = (typeof ownSlots)[number];
