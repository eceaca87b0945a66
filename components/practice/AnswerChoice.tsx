import { practiceWords } from '#words/practice.ts';
import type { Ref } from 'preact';

type Props = Readonly<{
  id: string;
  label: string;
  options: readonly Readonly<{ code: string; said: string }>[];
  chosen: string;
  error: string | undefined;
  field: Ref<HTMLInputElement>;
  onChoose: (code: string) => void;
}>;

/** One answer of several, as plain radio buttons. */
export function AnswerChoice({ id, label, options, chosen, error, field, onChoose }: Props) {
  return (
    <fieldset class="field ans options" aria-describedby={error ? `${id}-e` : undefined}>
      <legend>{label}</legend>
      {options.map(({ code, said }, i) => (
        <label key={code}>
          <input
            ref={i === 0 ? field : null}
            type="radio"
            name={id}
            value={code}
            checked={chosen === code}
            onChange={() => onChoose(code)}
          />
          <span>{said}</span>
        </label>
      ))}
      {error && (
        <p class="field-error" id={`${id}-e`} role="alert">
          {error}
        </p>
      )}
      <button class="btn" type="submit">
        {practiceWords.check}
      </button>
    </fieldset>
  );
}
