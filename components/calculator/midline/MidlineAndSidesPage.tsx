import type { ComponentChildren } from 'preact';
import { MidlineAndSides } from './MidlineAndSides.tsx';
import { MidlineTables } from './MidlineTables.tsx';

/** Midline and sides on its own page: every table stands open and is there without scripts. */
export function MidlineAndSidesPage({
  id,
  legend,
  children,
}: Readonly<{ id: string; legend?: ComponentChildren; children?: ComponentChildren }>) {
  return (
    <MidlineAndSides id={id} tables={MidlineTables} legend={legend}>
      {children}
    </MidlineAndSides>
  );
}
