import { toAddress } from '#calculators/address.ts';
import type { Calculator, State } from '#calculators/spec.ts';
import { keepTyped, typedHere } from '#components/site/typedShelf.ts';
import { typedWords } from '#words/typed.ts';
import type { VNode } from 'preact';
import { readSlot, type Fields } from './readSlot.ts';
import { arrivalNotes, fromLink } from './RefusedParts.tsx';
import { fromTyped, toTyped } from './typedState.ts';
import type { Draft } from './useCalculator.ts';

/**
 * What is needed once something is typed, linked, copied or kept; fetched then, so that a page that is only
 * read stays small.
 */
export { readSlot };

/** Of the way in which numbers are kept. Only what is written otherwise makes another. */
const typedVersion = 1;
const place = ({ id }: Readonly<{ id: string }>): string => `calculator ${id}`;

/** What a page finds when it is opened. */
type Arrived<S> = Readonly<{
  state: S;
  drafts: Readonly<Record<string, Draft>> | undefined;
  note: VNode | undefined;
}>;

/** Loaded again, or reached by Back: then what was typed under a link counts, and not the link. */
const isReturn = (): boolean =>
  performance
    .getEntriesByType('navigation')
    .some((entry) => 'type' in entry && (entry.type === 'reload' || entry.type === 'back_forward'));

/**
 * The state a page opens with. A link with numbers wins over what was typed earlier today, unless it was
 * typed under this very link and the reader comes back to it.
 */
export function arrive<S extends State, R>(
  calculator: Calculator<S, R>,
  nameOf: (name: string) => string,
): Arrived<S> {
  const query = location.search;
  const linked = fromLink(calculator, query, nameOf);
  const entry = typedHere(place(calculator));
  const typed = entry && fromTyped(calculator, entry.typed, nameOf);
  const anew: string[] = [];
  for (const name in calculator.fields)
    if (calculator.fields[name].kept === 'memory') anew.push(typedWords.askedAnew(nameOf(name)));
  if (!typed || (linked.holdsAny && !(typed.query === query && isReturn()))) {
    const notes = linked.holdsAny && isReturn() ? anew : [];
    return { state: linked.state, drafts: undefined, note: arrivalNotes(linked.sentences, notes) };
  }
  const isLost = typed.isLost || entry.version !== typedVersion;
  return {
    state: typed.state,
    drafts: Object.keys(typed.drafts).length > 0 ? typed.drafts : undefined,
    note: arrivalNotes(linked.sentences, [...(isLost ? [typedWords.calculatorLost] : []), ...anew]),
  };
}

/** Keeps the numbers on this device until the day is over; at the start there is nothing to keep. */
export function keep<S extends State, R>(
  calculator: Calculator<S, R>,
  state: S,
  drafts: Readonly<Record<string, Draft>>,
): void {
  const typed = toTyped(calculator, state, drafts, location.search);
  keepTyped(place(calculator), typed && { version: typedVersion, typed });
}

/** An address that holds the state. */
function linkTo<S extends State>(calculator: Fields<S>, state: S, path: string): string {
  const query = toAddress(calculator, state);
  return `${location.origin}${path}${query ? `?${query}` : ''}`;
}

/**
 * Copies a link that holds the state and says so; where the browser does not allow it, gives the link itself.
 */
export async function copyLink<S extends State>(
  calculator: Fields<S>,
  state: S,
  path: string,
): Promise<string> {
  const link = linkTo(calculator, state, path);
  try {
    await navigator.clipboard.writeText(link);
    return 'Link copied. It holds your numbers and nothing else.';
  } catch {
    return `This browser does not allow copying. The link is ${link}`;
  }
}

/** Puts the state into the address of the page itself, where it outlives a new load. */
export function keepInAddress<S extends State>(calculator: Fields<S>, state: S): void {
  history.replaceState(history.state, '', linkTo(calculator, state, location.pathname) + location.hash);
}
