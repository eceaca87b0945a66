import type { Calculator, State } from '#calculators/spec.ts';
import { fromAddress, holdsAny } from '#calculators/address.ts';
import { Icon } from '#components/site/Icon.tsx';
import { cautionIcon } from '#components/site/icons.ts';
import { refusalSentence } from '#words/refusal.ts';
import type { VNode } from 'preact';

/**
 * What a link holds: a whole state, whether any of it is this calculator's, and what of it was refused, in
 * sentences.
 */
export function fromLink<S extends State, R>(
  calculator: Calculator<S, R>,
  query: string,
  nameOf: (name: string) => string,
): Readonly<{ state: S; holdsAny: boolean; sentences: readonly string[] }> {
  const { state, refused } = fromAddress(calculator, query);
  return {
    state,
    holdsAny: holdsAny(calculator, query),
    // A key that is no field's has no label: looking one up would find what every object inherits.
    sentences: refused.map(({ key, refusal }) =>
      refusalSentence(refusal.code === 'unknown-field' ? key : nameOf(key), refusal),
    ),
  };
}

const mostNamed = 5;

/** What is to be said about a link and about what was kept; nothing where all of it was read. */
export function arrivalNotes(refused: readonly string[], notes: readonly string[] = []): VNode | undefined {
  if (refused.length === 0 && notes.length === 0) return undefined;
  return (
    <>
      {refused.length > 0 && <RefusedParts sentences={refused} />}
      {notes.map((note) => (
        <p key={note} class="notice plain" role="status">
          {note}
        </p>
      ))}
    </>
  );
}

function RefusedParts({ sentences }: Readonly<{ sentences: readonly string[] }>) {
  return (
    <div class="caution slim" role="alert">
      <Icon of={cautionIcon} />
      <div>
        <h3>Part of this link could not be read.</h3>
        <ul>
          {sentences.slice(0, mostNamed).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}
