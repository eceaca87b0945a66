import type { ComponentChildren } from 'preact';
import { FrontAndTail } from './FrontAndTail.tsx';
import { FrontAndTailTables } from './FrontAndTailTables.tsx';

/** Front and tail on its own page: every table stands open and is there without scripts. */
export function FrontAndTailPage({ id, legend, children }: Readonly<{ id: string; legend?: ComponentChildren; children?: ComponentChildren }>) {
  return <FrontAndTail id={id} tables={FrontAndTailTables} legend={legend}>{children}</FrontAndTail>;
}
