import type { ComponentChildren } from 'preact';
import { MidlineAndSides, type MidlineAnswer } from './MidlineAndSides.tsx';
import { MidlineTables } from './MidlineTables.tsx';

// A lesson fetches the tables from here: the file of an island keeps its names, where any other file that is
// shared would take one more to hand them on.
export { MidlineTables } from './MidlineTables.tsx';

/** Midline and sides on its own page: every table stands open and is there without scripts. */
export function MidlineAndSidesPage({
  id,
  start,
  legend,
  children,
}: Readonly<{ id: string; start: MidlineAnswer; legend?: ComponentChildren; children?: ComponentChildren }>) {
  return (
    <MidlineAndSides id={id} start={start} tables={MidlineTables} legend={legend}>
      {children}
    </MidlineAndSides>
  );
}
