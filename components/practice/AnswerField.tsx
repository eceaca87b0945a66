import { readDecimal } from '#lib/quantities/decimal.ts';
import type { ClosedRange } from '#lib/quantities/closedRange.ts';
import { practiceWords, readAs, rightWithin } from '#words/practice.ts';
import type { Ref } from 'preact';

type Props = Readonly<{
  id: string;
  label: string;
  unit: string;
  range: ClosedRange;
  text: string;
  error: string | undefined;
  field: Ref<HTMLInputElement>;
  onText: (text: string) => void;
}>;

/** One number with its unit outside, what was read, and how exact it has to be. */
export function AnswerField({ id, label, unit, range, text, error, field, onText }: Props) {
  const read = readDecimal(text, unit);
  return (
    <div class="field ans">
      <label for={id}>{label}</label>
      <div class="unit">
        <input
          ref={field}
          class="in"
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          value={text}
          aria-invalid={error ? true : undefined}
          aria-describedby={error ? `${id}-e ${id}-h` : `${id}-h`}
          onInput={({ currentTarget }) => onText(currentTarget.value)}
        />
        <span class="plain">{unit}</span>
        <button class="btn" type="submit">
          {practiceWords.check}
        </button>
      </div>
      <p class="hint" id={`${id}-h`}>
        {read.ok ? `${readAs(read.value, unit)} ` : ''}
        {rightWithin(range, unit)}
      </p>
      {error && (
        <p class="field-error" id={`${id}-e`} role="alert">
          {error}
        </p>
      )}
    </div>
  );
}
