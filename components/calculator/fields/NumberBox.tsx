import { useState } from 'preact/hooks';
import type { Draft } from '../frame/useCalculator.ts';

type Props = Readonly<{
  id: string;
  label: string;
  unit: string;
  shown: string;
  refused?: Draft | undefined;
  onType: (text: string) => void;
  hint?: string | undefined;
  /** May be below nothing: number keys of a phone can lack the minus sign, so there is a press for it. */
  signed?: boolean;
}>;

/** The same number on the other side of nothing. */
const turned = (text: string) => (/^\s*[-−]/.test(text) ? text.replace(/[-−]/, '') : `-${text}`);

/**
 * A number with its unit in view. While the box is being typed in, it keeps exactly what was typed,
 * so "31." or "31,5" is never rewritten under the reader's fingers.
 */
export function NumberBox({ id, label, unit, shown, refused, onType, hint, signed }: Props) {
  const [typing, setTyping] = useState<string | undefined>();
  const text = typing ?? refused?.text ?? shown;
  const describedBy = [refused && `${id}-error`, hint && `${id}-hint`].filter(Boolean).join(' ');
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="unit">
        <input
          class="in"
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          value={text}
          aria-invalid={refused ? true : undefined}
          aria-describedby={describedBy || undefined}
          onInput={({ currentTarget: { value } }) => {
            setTyping(value);
            onType(value);
          }}
          onBlur={() => setTyping(undefined)}
        />
        <span class="plain">{unit}</span>
        {signed && (
          <button
            class="sign needs-js"
            type="button"
            aria-label={`${label}: change the sign`}
            onClick={() => onType(turned(text))}
          >
            ±
          </button>
        )}
      </div>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {refused && (
        <p class="field-error" id={`${id}-error`} role="alert">
          {refused.sentence}
        </p>
      )}
    </div>
  );
}
