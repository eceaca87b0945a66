import { colourWorked } from './colour.ts';
import { mappingWorked } from './mapping.ts';

/** Every worked example by id. */
export const workedExamples = { ...mappingWorked, ...colourWorked } as const;
