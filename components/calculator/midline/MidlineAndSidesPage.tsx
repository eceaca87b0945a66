import { midlineAndSides } from '#calculators/midlineAndSides.ts';
import { startState } from '#calculators/startState.ts';
import type { ComponentChildren } from 'preact';
import { MidlineAndSides } from './MidlineAndSides.tsx';
import { MidlineTables } from './MidlineTables.tsx';

// A lesson fetches the sums and the tables from here: the file of an island keeps its names, where any other file that is shared would take
// one more to hand them on.
export { MidlineTables } from './MidlineTables.tsx';
export const { solve } = midlineAndSides;

const start = solve(startState(midlineAndSides));
const own = { solve, tables: MidlineTables };

/** Midline and sides on its own page: every table stands open and is there without scripts. */
export function MidlineAndSidesPage({
  id,
  legend,
  children,
}: Readonly<{ id: string; legend?: ComponentChildren; children?: ComponentChildren }>) {
  return (
    <MidlineAndSides id={id} start={start} own={own} legend={legend}>
      {children}
    </MidlineAndSides>
  );
}
