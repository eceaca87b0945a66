import { toAddress } from '#calculators/address.ts';
import { parsers } from '#calculators/parsers.ts';
import type { Calculator, State } from '#calculators/spec.ts';
import { refusalSentence } from '#words/refusal.ts';
import { fromLink } from './RefusedParts.tsx';

/** What is needed once something is typed, linked or copied; fetched then, so that a page that is only read stays small. */
export { fromLink, parsers, refusalSentence };

/** A whole link to a page of this site that holds the state. */
export function linkTo<S extends State, R>(calculator: Calculator<S, R>, state: S, path: string): string {
  const query = toAddress(calculator, state);
  return `${location.origin}${path}${query ? `?${query}` : ''}`;
}
