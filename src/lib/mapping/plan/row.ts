import type { BrowMark, Side } from '../marks/markSet.ts';
import type { Edge } from './edgeSpans.ts';

/** What a plan can be held by. */
export type Holder =
  | Readonly<{ kind: 'raise' | 'lower'; side: Side; mark: BrowMark }>
  | Readonly<{ kind: 'thickness' | 'growth' | 'tail'; side: Side }>
  | Readonly<{ kind: 'old-work'; side: Side; edge: Edge; uMm: number }>;

/**
 * One condition on the unknowns: Σ coefficient × unknown ≥ atLeast. Unknowns past the list's end do not
 * count.
 */
export type Row = Readonly<{ coefficients: readonly number[]; atLeast: number; holder?: Holder }>;

/** Σ coefficient × unknown. */
export function rowValue(coefficients: readonly number[], unknowns: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < coefficients.length; i++) sum += (coefficients[i] ?? 0) * (unknowns[i] ?? 0);
  return sum;
}
