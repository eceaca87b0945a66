import { coverFacts } from './facts/cover.ts';
import { colourHabits } from './facts/habits.ts';
import { healedFacts } from './facts/healed.ts';
import { labelFacts } from './facts/labels.ts';
import { lampFacts } from './facts/lamps.ts';
import { opticsFacts } from './facts/optics.ts';
import { skinFacts } from './facts/skin.ts';
import { strokeFacts, strokeHabits } from './facts/strokes.ts';

/** Every number and habit of colour, by id. */
export const colourFacts = {
  ...opticsFacts,
  ...colourHabits,
  ...skinFacts,
  ...coverFacts,
  ...strokeFacts,
  ...strokeHabits,
  ...healedFacts,
  ...labelFacts,
  ...lampFacts,
} as const;

export type ColourFactId = keyof typeof colourFacts;
