import type { Calculator, State } from '#calculators/spec.ts';
import { fromAddress } from '#calculators/address.ts';
import { Icon } from '#components/site/Icon.tsx';
import { cautionIcon } from '#components/site/icons.ts';
import { refusalSentence } from '#words/refusal.ts';
import type { VNode } from 'preact';

/**
 * What a link holds: a whole state, and a note on what of it was refused. Fetched only where there is
 * something to read.
 */
export function fromLink<S extends State, R>(
  calculator: Calculator<S, R>,
  query: string,
  nameOf: (name: string) => string,
): Readonly<{ state: S; note: VNode | undefined }> {
  const { state, refused } = fromAddress(calculator, query);
  return {
    state,
    note:
      refused.length > 0 ? (
        <RefusedParts sentences={refused.map(({ key, refusal }) => refusalSentence(nameOf(key), refusal))} />
      ) : undefined,
  };
}

const mostNamed = 5;

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
