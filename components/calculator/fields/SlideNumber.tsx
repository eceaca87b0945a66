import { NumberBox } from './NumberBox.tsx';
import type { Draft } from '../frame/useCalculator.ts';

type Props = Readonly<{
  id: string;
  label: string;
  unit: string;
  value: number;
  shown: string;
  lo: number;
  hi: number;
  step: number;
  ends: readonly [string, string];
  refused?: Draft | undefined;
  onType: (text: string) => void;
}>;

/** A number that can be slid, stepped by arrow keys, or typed. */
export function SlideNumber({ id, label, unit, value, shown, lo, hi, step, ends, refused, onType }: Props) {
  return (
    <div class="slide-number">
      <NumberBox
        id={id}
        label={label}
        unit={unit}
        shown={shown}
        refused={refused}
        onType={onType}
        signed={lo < 0}
      />
      <div>
        <input
          type="range"
          min={lo}
          max={hi}
          step={step}
          value={value}
          aria-label={`${label}, slide`}
          aria-valuetext={`${shown} ${unit}`}
          onInput={({ currentTarget }) => onType(currentTarget.value)}
        />
        <div class="ends" aria-hidden="true">
          <span>{ends[0]}</span>
          <span>{ends[1]}</span>
        </div>
      </div>
    </div>
  );
}
