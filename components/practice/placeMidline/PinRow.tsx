import { NumberBox } from '#components/calculator/fields/NumberBox.tsx';
import type { Draft } from '#components/calculator/frame/useCalculator.ts';
import { Icon } from '#components/site/Icon.tsx';
import { leftIcon, rightIcon } from '#components/site/icons.ts';
import { fixed } from '#words/number.ts';
import { placeMidlineWords as words } from '#words/skills/placeMidline.ts';
import type { Pin } from './usePins.ts';

type Props = Readonly<{
  id: string;
  pin: Pin;
  xMm: number;
  draft: Draft | undefined;
  onType: (text: string) => void;
  onStep: (byMm: number) => void;
}>;

const stepMm = 0.5;
/** As exact as it was given: a tenth when dragged, more when typed so. */
const decimals = (mm: number) => Math.min(3, Math.max(1, String(mm).split('.')[1]?.length ?? 1));

/** One pin: its number, and two buttons that step it to the side. */
export function PinRow({ id, pin, xMm, draft, onType, onStep }: Props) {
  const step = (name: 'left' | 'right') => (
    <button
      class="step"
      type="button"
      aria-label={`${words.pins[pin]}: move ${name} by ${stepMm} millimetres`}
      onClick={() => onStep(name === 'left' ? -stepMm : stepMm)}
    >
      <Icon of={name === 'left' ? leftIcon : rightIcon} />
    </button>
  );
  return (
    <div class="pin-row" data-early>
      <NumberBox
        id={id}
        label={words.across[pin]}
        unit="mm"
        signed
        shown={fixed(xMm, decimals(xMm))}
        refused={draft}
        onType={onType}
      />
      <div class="stepper">
        {step('left')}
        {step('right')}
      </div>
    </div>
  );
}
