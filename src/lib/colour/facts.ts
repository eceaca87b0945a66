import { coverFacts } from './facts/cover.ts';
import { colourHabits } from './facts/habits.ts';
import { healedFacts } from './facts/healed.ts';
import { labelFacts } from './facts/labels.ts';
import { lampFacts } from './facts/lamps.ts';
import { opticsFacts } from './facts/optics.ts';
import { skinClassFacts } from './facts/skinClasses.ts';
import { skinDifferenceFacts } from './facts/skinDifferences.ts';
import { skinMeasuredFacts } from './facts/skinMeasured.ts';
import { skinReadingFacts } from './facts/skinReading.ts';
import { strokeFacts, strokeHabits } from './facts/strokes.ts';

/** Every number and habit of colour, by id. */
export const colourFacts = {
  ...opticsFacts,
  ...colourHabits,
  ...skinClassFacts,
  ...skinMeasuredFacts,
  ...skinDifferenceFacts,
  ...skinReadingFacts,
  ...coverFacts,
  ...strokeFacts,
  ...strokeHabits,
  ...healedFacts,
  ...labelFacts,
  ...lampFacts,
} as const;

export type ColourFactId = keyof typeof colourFacts;
