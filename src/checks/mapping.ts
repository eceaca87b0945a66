import type { Check } from './check.ts';
import { archChecks } from './mapping/arch.ts';
import { faceChecks } from './mapping/faces.ts';
import { pictureChecks } from './mapping/pictures.ts';
import { normalChecks } from './mapping/normal.ts';
import { outlineChecks } from './mapping/outline.ts';
import { placingChecks } from './mapping/placing.ts';
import { ownErrorChecks } from './mapping/ownError.ts';
import { seedChecks } from './mapping/seeds.ts';
import { shapeChecks } from './mapping/shape.ts';
import { tiltChecks } from './mapping/tilt.ts';
import { uncertaintyChecks } from './mapping/uncertainty.ts';

/** Outside checks of everything the midline thread computes. */
export const mappingChecks = [
  ...normalChecks,
  ...uncertaintyChecks,
  ...ownErrorChecks,
  ...shapeChecks,
  ...seedChecks,
  ...tiltChecks,
  ...faceChecks,
  ...placingChecks,
  ...outlineChecks,
  ...pictureChecks,
  ...archChecks,
] as const satisfies readonly Check[];
