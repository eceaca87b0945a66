import type { WorkedId } from '#words/worked/index.ts';
import { midlineWorked } from './mapping/midline.ts';
import { levelWorked } from './mapping/level.ts';
import { seeingWorked } from './mapping/seeing.ts';
import { posesWorked } from './mapping/poses.ts';
import { placingWorked } from './mapping/placing.ts';
import { outlineWorked } from './mapping/outline.ts';
import { picturesWorked } from './mapping/pictures.ts';
import { againWorked } from './mapping/again.ts';
import { underWorked } from './mapping/under.ts';
import { coverWorked } from './mapping/cover.ts';
import { skinReadingWorked } from './colour/skinReading.ts';
import { bottlesWorked } from './colour/bottles.ts';
import { healedWorked } from './colour/healed.ts';
import { lampsWorked } from './colour/lamps.ts';
import { dropsWorked } from './colour/drops.ts';
import { oldPigmentWorked } from './colour/oldPigment.ts';
import { clientsWorked } from './colour/clients.ts';
import { strokesWorked } from './skin/strokes.ts';
import type { AnyWorked } from './worked.ts';

const gathered = {
  ...midlineWorked,
  ...levelWorked,
  ...seeingWorked,
  ...posesWorked,
  ...placingWorked,
  ...outlineWorked,
  ...picturesWorked,
  ...againWorked,
  ...underWorked,
  ...coverWorked,
  ...skinReadingWorked,
  ...bottlesWorked,
  ...healedWorked,
  ...lampsWorked,
  ...dropsWorked,
  ...oldPigmentWorked,
  ...clientsWorked,
  ...strokesWorked,
} as const;

/** Every worked example by id. One without words does not compile, nor words without an example. */
export const workedExamples = gathered satisfies Readonly<Record<WorkedId, AnyWorked>> &
  Readonly<Partial<Record<Exclude<keyof typeof gathered, WorkedId>, never>>>;
