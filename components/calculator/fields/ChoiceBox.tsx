type Props = Readonly<{
  id: string;
  label: string;
  value: string;
  options: readonly Readonly<{ value: string; label: string }>[];
  onType: (text: string) => void;
  hint?: string | undefined;
}>;

/** One of a few named answers, as the system's own list: one tap on a phone, arrow keys on a keyboard. */
export function ChoiceBox({ id, label, value, options, onType, hint }: Props) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        class="in"
        id={id}
        value={value}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={({ currentTarget }) => onType(currentTarget.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value} selected={option.value === value}>
            {option.label}
          </option>
        ))}
      </select>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}
