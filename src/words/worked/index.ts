import { midlineWorkedWords } from './mapping/midline.ts';
import { levelWorkedWords } from './mapping/level.ts';
import { seeingWorkedWords } from './mapping/seeing.ts';
import { posesWorkedWords } from './mapping/poses.ts';
import { placingWorkedWords } from './mapping/placing.ts';
import { outlineWorkedWords } from './mapping/outline.ts';
import { picturesWorkedWords } from './mapping/pictures.ts';
import { againWorkedWords } from './mapping/again.ts';
import { underWorkedWords } from './mapping/under.ts';
import { coverWorkedWords } from './mapping/cover.ts';
import { skinReadingWorkedWords } from './colour/skinReading.ts';
import { bottlesWorkedWords } from './colour/bottles.ts';
import { healedWorkedWords } from './colour/healed.ts';
import { lampsWorkedWords } from './colour/lamps.ts';
import { dropsWorkedWords } from './colour/drops.ts';
import { oldPigmentWorkedWords } from './colour/oldPigment.ts';
import { clientsWorkedWords } from './colour/clients.ts';
import { strokesWorkedWords } from './skin/strokes.ts';

/** Text for each worked example, from its inputs and the numbers the library returned. */
export const workedWords = {
  ...midlineWorkedWords,
  ...levelWorkedWords,
  ...seeingWorkedWords,
  ...posesWorkedWords,
  ...placingWorkedWords,
  ...outlineWorkedWords,
  ...picturesWorkedWords,
  ...againWorkedWords,
  ...underWorkedWords,
  ...coverWorkedWords,
  ...skinReadingWorkedWords,
  ...bottlesWorkedWords,
  ...healedWorkedWords,
  ...lampsWorkedWords,
  ...dropsWorkedWords,
  ...oldPigmentWorkedWords,
  ...clientsWorkedWords,
  ...strokesWorkedWords,
} as const;

export type WorkedId = keyof typeof workedWords;
