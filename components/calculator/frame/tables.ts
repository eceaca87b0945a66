import type { MidlineAndSidesState } from '#calculators/midlineAndSidesFields.ts';
import type { ShownReading, NoFaceReading } from '#lib/mapping/compare/readFace.ts';
import type { ComponentChildren } from 'preact';

/**
 * How the tables come: built in, on the calculator's own page, or fetched when a lesson's reader opens them.
 */
export type Tables = (
  props: Readonly<{ reading: ShownReading | NoFaceReading; state: MidlineAndSidesState }>,
) => ComponentChildren;
