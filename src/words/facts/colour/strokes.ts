import type { strokeFacts, strokeHabits } from '#lib/colour/facts/strokes.ts';

/** What each fact about strokes and dots is, in a few plain words. */
export const colourStrokesFactNames = {
  'hair-stroke-needle-mm': 'Smallest needle for hair strokes',
  'tattoo-needle-mm': 'Usual needle of a tattoo',
  'hairs-of-a-restored-brow': 'Hairs that make a new brow in surgery, at least',
  'fine-detail-lost-years': 'Fine lines of a body tattoo have lost their definition after',
  'complex-detail-lost-years': 'Details of complex tattoos are lost after about',
  'stroke-spread-mm': 'Width of a stroke once it has spread',
  'dot-spread-mm': 'Diameter of a dot once it has spread',
  'lines-widen': 'Drawn lines widen',
  'leave-bare-skin': 'Bare skin is left between strokes',
} as const satisfies Readonly<Record<keyof typeof strokeFacts | keyof typeof strokeHabits, string>>;
