import type { ComponentChildren } from 'preact';
import { CoverTables } from './CoverTables.tsx';
import { CoverTheOldShape } from './CoverTheOldShape.tsx';
import type { CoverTold } from './coverTold.ts';

// Fetched from here: see MidlineAndSidesPage.
export { CoverTables } from './CoverTables.tsx';

/** Cover of the old shape on its own page: the plan stands open and is there without scripts. */
export function CoverTheOldShapePage({
  id,
  start,
  legend,
  children,
}: Readonly<{ id: string; start: CoverTold; legend?: ComponentChildren; children?: ComponentChildren }>) {
  return (
    <CoverTheOldShape id={id} start={start} open tables={CoverTables} legend={legend}>
      {children}
    </CoverTheOldShape>
  );
}
