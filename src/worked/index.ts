import { mappingWorked } from './mapping.ts';

/** Every worked example by id. */
export const workedExamples = { ...mappingWorked } as const;
