import { colourWorked } from './colour.ts';
import { mappingWorked } from './mapping.ts';
import { oldPigmentWorked } from './oldPigment.ts';

/** Every worked example by id. */
export const workedExamples = { ...mappingWorked, ...colourWorked, ...oldPigmentWorked } as const;
