import { usualDifference } from '#calculators/usualDifference.ts';
import { HundredStrokes } from '#components/pictures/HundredStrokes.tsx';
import { fixed } from '#words/number.ts';
import { placeWords, usualSays } from '#words/usualDifference.ts';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { useCalculator } from '../frame/useCalculator.ts';

const options = (['front', 'middle', 'tail'] as const).map((value) => ({ value, label: placeWords[value] }));
const labels = { difference: 'Height difference', place: 'Where on the brow' } as const;

const nameOf = (key: string) => (key === 'difference' || key === 'place' ? labels[key] : key);

/** How unequal is usual: the island. */
export function UsualDifference({ id = 'usual' }: Readonly<{ id?: string }>) {
  const desk = useCalculator(usualDifference, nameOf);
  const { state, result } = desk;
  const step = (byMm: number) => desk.slideBy('difference', byMm);
  return (
    <Frame
      desk={desk}
      id={id}
      address="/calculators/usual-difference/"
      says={usualSays(result, state)}
      picture={<HundredStrokes id={id} hundredMm={result.hundredMm} differenceMm={state.difference} />}
      side={
        <>
          <div class="field">
            <label for={`${id}-slide`}>Slide the difference</label>
            <input
              id={`${id}-slide`}
              type="range"
              min="0"
              max="8"
              step="0.1"
              value={state.difference}
              aria-valuetext={`${fixed(state.difference)} millimetres`}
              onInput={({ currentTarget }) => desk.type('difference', currentTarget.value)}
            />
            <div class="ends" aria-hidden="true">
              <span>0 mm</span>
              <span>8 mm</span>
            </div>
          </div>
          <NumberBox
            id={`${id}-difference`}
            label={labels.difference}
            unit="mm"
            shown={fixed(state.difference)}
            refused={desk.draft('difference')}
            onType={(text) => desk.type('difference', text)}
          />
          <div class="stepper">
            <button
              class="btn line"
              type="button"
              aria-label="0.1 millimetres less"
              onClick={() => step(-0.1)}
            >
              − 0.1
            </button>
            <button
              class="btn line"
              type="button"
              aria-label="0.1 millimetres more"
              onClick={() => step(0.1)}
            >
              + 0.1
            </button>
          </div>
          <ChoiceBox
            id={`${id}-place`}
            label={labels.place}
            value={state.place}
            options={options}
            onType={(text) => desk.type('place', text)}
          />
        </>
      }
    />
  );
}
