import { useState } from 'preact/hooks';
import type { Draft } from '../frame/useCalculator.ts';

type Props = Readonly<{
  id: string;
  label: string;
  hint: string;
  kept: string;
  refused?: Draft | undefined;
  onType: (text: string) => void;
}>;

/**
 * One pair a line, every number with as many decimals as the finest has: the columns stand under each other.
 */
function inColumns(kept: string): string {
  const decimals = Math.max(...kept.split(/[_*]/).map((number) => number.split('.')[1]?.length ?? 0));
  return kept
    .split('*')
    .map((pair) =>
      pair
        .split('_')
        .map((number) => Number(number).toFixed(decimals))
        .join('  '),
    )
    .join('\n');
}

/**
 * A list of pairs, one a line. While it is typed in it keeps exactly what was typed; afterwards it shows the
 * pairs as they were read.
 */
export function PairsBox({ id, label, hint, kept, refused, onType }: Props) {
  const [typing, setTyping] = useState<string | undefined>();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <textarea
        class="in pairs"
        id={id}
        rows={7}
        autocomplete="off"
        spellcheck={false}
        value={typing ?? refused?.text ?? inColumns(kept)}
        aria-invalid={refused ? true : undefined}
        aria-describedby={refused ? `${id}-error ${id}-hint` : `${id}-hint`}
        onInput={({ currentTarget: { value } }) => {
          setTyping(value);
          onType(value);
        }}
        onBlur={() => setTyping(undefined)}
      />
      <p class="hint" id={`${id}-hint`}>
        {hint}
      </p>
      {refused && (
        <p class="field-error" id={`${id}-error`} role="alert">
          {refused.sentence}
        </p>
      )}
    </div>
  );
}
