import type { MidlineAndSidesState } from '#calculators/midlineAndSides.ts';
import type { FaceReading, NoFaceReading } from '#lib/mapping/compare/readFace.ts';
import type { ComponentChildren } from 'preact';

/**
 * How the tables come: built in, on the calculator's own page, or fetched when a lesson's reader opens them.
 */
export type Tables = (
  props: Readonly<{ reading: FaceReading | NoFaceReading; state: MidlineAndSidesState }>,
) => ComponentChildren;
