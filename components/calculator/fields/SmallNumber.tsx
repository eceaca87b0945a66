import { useState } from 'preact/hooks';
import type { Draft } from '../frame/useCalculator.ts';

type Props = Readonly<{
  id: string;
  label: string;
  shown: string;
  refused?: Draft | undefined;
  onType: (text: string) => void;
}>;

/**
 * A number inside a table; its message stands in a row of its own. It keeps what is typed while it is typed
 * in.
 */
export function SmallNumber({ id, label, shown, refused, onType }: Props) {
  const [typing, setTyping] = useState<string | undefined>();
  return (
    <input
      class="in mm"
      id={id}
      type="text"
      inputMode="decimal"
      autocomplete="off"
      spellcheck={false}
      aria-label={label}
      value={typing ?? refused?.text ?? shown}
      aria-invalid={refused ? true : undefined}
      aria-describedby={refused ? `${id}-error` : undefined}
      onInput={({ currentTarget: { value } }) => {
        setTyping(value);
        onType(value);
      }}
      onBlur={() => setTyping(undefined)}
    />
  );
}
