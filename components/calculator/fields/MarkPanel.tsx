import type { PointMm } from '#lib/geometry/point.ts';
import { Icon } from '#components/site/Icon.tsx';
import { type IconPaths, downIcon, leftIcon, rightIcon, upIcon } from '#components/site/icons.ts';
import { fixed } from '#words/number.ts';
import { NumberBox } from './NumberBox.tsx';
import type { Axis, Draft } from '../frame/useCalculator.ts';

type Group = Readonly<{ label: string; marks: readonly Readonly<{ key: string; label: string }>[] }>;

type Props = Readonly<{
  id: string;
  groups: readonly Group[];
  active: string;
  point: PointMm;
  drafts: Readonly<Record<Axis, Draft | undefined>>;
  onPick: (key: string) => void;
  onType: (axis: Axis, text: string) => void;
  onStep: (by: PointMm) => void;
}>;

const steps: readonly Readonly<{ name: string; icon: IconPaths; by: PointMm }>[] = [
  { name: 'left', icon: leftIcon, by: { xMm: -0.1, yMm: 0 } },
  { name: 'right', icon: rightIcon, by: { xMm: 0.1, yMm: 0 } },
  { name: 'up', icon: upIcon, by: { xMm: 0, yMm: 0.1 } },
  { name: 'down', icon: downIcon, by: { xMm: 0, yMm: -0.1 } },
];

/** One mark at a time: choose it, read its two numbers, type them or step them. */
export function MarkPanel({ id, groups, active, point, drafts, onPick, onType, onStep }: Props) {
  return (
    <div class="mark-panel" role="group" aria-label="The chosen mark">
      <div class="field">
        <label for={`${id}-mark`}>Mark</label>
        <select
          class="in"
          id={`${id}-mark`}
          value={active}
          onChange={({ currentTarget }) => onPick(currentTarget.value)}
        >
          {groups.map(({ label, marks }) => (
            <optgroup key={label} label={label}>
              {marks.map((mark) => (
                <option key={mark.key} value={mark.key} selected={mark.key === active}>
                  {mark.label}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </div>
      <div class="mark-two" key={active}>
        <NumberBox
          id={`${id}-x`}
          label="Across"
          unit="mm"
          signed
          shown={fixed(point.xMm)}
          refused={drafts.x}
          onType={(text) => onType('x', text)}
        />
        <NumberBox
          id={`${id}-y`}
          label="Up"
          unit="mm"
          signed
          shown={fixed(point.yMm)}
          refused={drafts.y}
          onType={(text) => onType('y', text)}
        />
      </div>
      <div class="stepper">
        {steps.map(({ name, icon, by }) => (
          <button
            key={name}
            class="step"
            type="button"
            aria-label={`Move ${name} by 0.1 millimetres`}
            onClick={() => onStep(by)}
          >
            <Icon of={icon} />
          </button>
        ))}
        <span class="plain tiny quiet">0.1 mm a step</span>
      </div>
    </div>
  );
}
