import { clientsWorked } from './clients.ts';
import { colourWorked } from './colour.ts';
import { dropsWorked } from './drops.ts';
import { lampWorked } from './lamps.ts';
import { mappingWorked } from './mapping.ts';
import { oldPigmentWorked } from './oldPigment.ts';
import { skinWorked } from './skin.ts';

/** Every worked example by id. */
export const workedExamples = {
  ...mappingWorked,
  ...colourWorked,
  ...lampWorked,
  ...dropsWorked,
  ...oldPigmentWorked,
  ...clientsWorked,
  ...skinWorked,
} as const;
